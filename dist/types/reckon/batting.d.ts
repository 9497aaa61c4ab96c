import { type RollPlan } from '../cutting/rolls.js';
import type { Purchase } from '../measure/shop.js';
import type { Answer, Input, Refused } from './answer.js';
import { type Field } from './fields.js';
import { type Package } from './packages.js';
import { type Size } from './shared.js';
export declare const battingFields: {
    shrinkage: {
        hint: string;
        kind: "length" | "lengths" | "size" | "count" | "percent" | "money" | "flag" | "step" | "text" | "own";
        label: string;
        example?: string;
        lines?: true;
        each?: string | undefined;
        read(raw: unknown, style: import("../measure/format.js").Style): import("fraction.js").default;
        write?(value: import("fraction.js").default, style: import("../measure/format.js").Style, raw: unknown): string;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
    } | {
        hint: string;
        options: Record<string, string>;
        kind: "length" | "lengths" | "size" | "count" | "percent" | "money" | "flag" | "step" | "text" | "own";
        label: string;
        example?: string;
        lines?: true;
        each?: string | undefined;
        read(raw: unknown, style: import("../measure/format.js").Style): import("fraction.js").default;
        write?(value: import("fraction.js").default, style: import("../measure/format.js").Style, raw: unknown): string;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
    };
    price: {
        label: string;
        kind: "length" | "lengths" | "size" | "count" | "percent" | "money" | "flag" | "step" | "text" | "own";
        example?: string;
        lines?: true;
        each?: string | undefined;
        read(raw: unknown, style: import("../measure/format.js").Style): import("fraction.js").default | undefined;
        write?(value: import("fraction.js").default | undefined, style: import("../measure/format.js").Style, raw: unknown): string;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        hint?: string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
    } | {
        label: string;
        options: Record<string, string>;
        kind: "length" | "lengths" | "size" | "count" | "percent" | "money" | "flag" | "step" | "text" | "own";
        example?: string;
        lines?: true;
        each?: string | undefined;
        read(raw: unknown, style: import("../measure/format.js").Style): import("fraction.js").default | undefined;
        write?(value: import("fraction.js").default | undefined, style: import("../measure/format.js").Style, raw: unknown): string;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        hint?: string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
    };
    increment: Field<import("../measure/shop.js").Step>;
    currency: Field<string | undefined>;
    bed: Field<string>;
    width: Field<import("fraction.js").default | undefined>;
    length: Field<import("fraction.js").default | undefined>;
    drop: Field<import("fraction.js").default>;
    tuck: Field<import("fraction.js").default>;
    overage: Field<import("fraction.js").default>;
    roll: Field<import("fraction.js").default[] | undefined>;
    packages: Field<Package[] | undefined>;
};
/** Input of {@link reckonBatting}: `width` and `length`, or `bed`, `drop` and `tuck`; `overage`, `packages`, `roll`, … */
export type BattingInput = Input<typeof battingFields>;
/** A package that is sold, and whether it will do. Lengths are exact inches. */
export interface BattingPackageResult extends Size {
    name: string;
    /** Whether it covers the batting needed, one way round or the other. */
    fits: boolean;
    /** The price of one, where the list gives it: a decimal number, and as it is shown. */
    price?: string;
    priceText?: string;
}
/** One way to cut the batting from a roll. Lengths are exact inches. */
export interface BattingRoll {
    /** How wide the roll is. */
    width: string;
    /** Lengths side by side: one, or two butted edge to edge; more only where no roll does with two. */
    lengths: number;
    /** What each is cut to. */
    length: string;
    /** `lengthwise`: the roll's length runs along the quilt's length; `crosswise`: across it. */
    direction: RollPlan['direction'];
    seams: number;
    fabric: string;
    buy: Purchase;
}
/** What {@link reckonBatting} gives back. */
export interface BattingResult extends Answer {
    /** The batting's size before quilting. */
    need: Size;
    /** The finished quilt: as given, or for the bed. */
    quilt: Size;
    /** About what the quilt will be once washed. */
    washed: Size;
    /** Every package, best first: those that fit, by price, and those without a price after them by area. */
    packages: BattingPackageResult[];
    /** Ways to cut it from a roll, best first: the fewest lengths, then the least batting. */
    rolls: BattingRoll[];
}
/**
 * Batting for a quilt, from a package or from the roll, and the quilt's size where it is for a bed. Impossible inputs
 * give `errors`, never an exception.
 */
export declare const reckonBatting: (input?: BattingInput) => BattingResult | Refused;
