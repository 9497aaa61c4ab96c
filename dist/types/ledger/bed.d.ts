import { type Bed } from '../trade/beds.js';
import type { Ledger } from './ledger.js';
import { type Quantity } from './quantity.js';
import { type Size } from './quilt.js';
/** The bed that a quilt is for, and how far it hangs over it. */
export declare const bedFields: {
    bed: import("./field.js").Field<"crib" | "twin" | "twin-long" | "full" | "queen" | "king" | "california-king" | "60x120" | "70x140" | "90x190" | "90x200" | "120x200" | "135x190" | "140x200" | "150x200" | "160x200" | "180x200" | "200x200" | "none"> & {
        options: readonly ("crib" | "twin" | "twin-long" | "full" | "queen" | "king" | "california-king" | "60x120" | "70x140" | "90x190" | "90x200" | "120x200" | "135x190" | "140x200" | "150x200" | "160x200" | "180x200" | "200x200" | "none")[];
    };
    drop: import("./field.js").Field<import("fraction.js").default>;
    tuck: import("./field.js").Field<import("fraction.js").default>;
};
export type BedRow = 'mattress' | 'bedWidth' | 'bedLength';
export interface BedSayings {
    size: Size;
    measureYours: undefined;
    notForCrib: undefined;
}
export declare const sayOfBed: <Code extends "size" | "measureYours" | "notForCrib">(code: Code, ...[values]: BedSayings[Code] extends undefined ? [] : [values: BedSayings[Code]]) => import("../measure/message.js").Message<Code>;
/** Whether the bed is one for a baby. */
export declare const isCrib: (bed: "none" | Bed) => boolean;
/** The size of a quilt for a bed, with the rows for it. */
export declare const sizeForBed: (ledger: Ledger<typeof bedFields, BedRow>, bed: Bed) => Size<Quantity>;
