import type { Quantity } from '../ledger/quantity.js';
import { type Units } from '../measure/units.js';
import type { Exact } from '../measure/exact.js';
/** The cell of a row, or of one entry of it. */
export interface Place {
    /** `B7`. */
    address: string;
    label: string;
    /** Inches in one of what it counts: what is bought stands there in the shop's unit. */
    per?: Exact | undefined;
}
/** Where the rows of a sheet stand, by id and entry. */
export type Places = Map<string, Place>;
export declare const placeKey: (id: string, entry?: number) => string;
/** How a quantity is reckoned in a spreadsheet, from the cells of a sheet whose lengths are in such units. */
export declare class Formulas {
    #private;
    readonly places: Places;
    readonly units: Units;
    /** The cells that some formula goes by. */
    readonly used: Set<string>;
    constructor(places: Places, units: Units);
    /** A formula, without its equals sign; undefined where it goes by no cell, and is but a number. */
    of(quantity: Quantity, per?: Exact): string | undefined;
    /** Whether one is not below the other. */
    reaches(reach: Quantity, need: Quantity): string;
}
