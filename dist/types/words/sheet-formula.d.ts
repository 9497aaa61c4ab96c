import type { Quantity } from '../ledger/quantity.js';
import { type Units } from '../measure/units.js';
import type { Exact } from '../measure/exact.js';
/** The cell of a row, or of one entry of it. */
export interface Place {
    /** `B7`. */
    address: string;
    label: string;
    /** Inches in one of its unit: an amount to buy is in the shop's unit. */
    per?: Exact | undefined;
}
/** The places of the rows, by id and entry. */
export type Places = Map<string, Place>;
export declare const placeKey: (id: string, entry?: number) => string;
/** Writes a quantity as a spreadsheet formula over the cells of a sheet, with lengths in these units. */
export declare class Formulas {
    #private;
    readonly places: Places;
    readonly units: Units;
    /** The cells that some formula uses. */
    readonly used: Set<string>;
    constructor(places: Places, units: Units);
    /** A formula without its equals sign. Undefined if it uses no cell, so that it is only a number. */
    of(quantity: Quantity, per?: Exact): string | undefined;
    /** Checks that one is at least the other. */
    reaches(reach: Quantity, need: Quantity): string;
}
