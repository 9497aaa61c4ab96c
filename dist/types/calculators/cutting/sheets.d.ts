import { type Cloth } from '../../ledger/cloth.js';
import { Purchase } from '../../ledger/purchase.js';
import { type Exact } from '../../measure/exact.js';
import { type Style } from '../../measure/format.js';
import { type ListSurroundings, type Sheet, type SheetLedger, type SheetsOfList } from './plan-shape.js';
/** How a sheet lies, and how much a wash leaves of it. */
interface Lying {
    oneWay: boolean;
    kept: Exact;
}
/** Reads the name of a sheet, or a size. Throws a `Refusal`. */
export declare const readSheet: (written: string, style: Style, { oneWay, kept }: Lying) => Sheet;
/** What a list says that it is cut from, and what the fabrics around it say. Reads each sheet once. */
export declare const sheetsOf: (ledger: SheetLedger, { sheets, letters }: ListSurroundings) => SheetsOfList;
/** A sheet as the cloth that a plan is made on. */
export declare const onSheet: ({ width, length }: Sheet) => {
    width: Exact;
    height: Exact;
};
/** A number of sheets to buy. */
export declare const sheetsToBuy: ({ kind, sold, length }: Sheet, count: number) => Purchase;
/** Whether two sheets are the same, after the wash too. */
export declare const isSameSheet: (a: Sheet, b: Sheet) => boolean;
/** Whether a shop sells two sheets as the same, before the wash. */
export declare const isSoldAs: (a: Sheet, b: Sheet) => boolean;
/** A sheet as cloth, in its size after the wash. */
export declare const clothOfSheet: ({ width }: Sheet) => Cloth;
export {};
