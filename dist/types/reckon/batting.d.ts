import { type RollPlan } from '../cutting/rolls.js';
import { type Purchase } from '../measure/shop.js';
import { type Answer, type Input, type Refused } from './book.js';
export declare const battingFields: {
    readonly shrinkage: {
        readonly hint: "cotton batting 3 to 5 %";
        readonly kind: "percent";
        readonly label: "Shrinkage";
        readonly initial: "0";
        readonly more: true;
    };
    readonly price: {
        readonly label: "Price of a yard or metre from the roll";
        readonly kind: "money";
        readonly optional: true;
        readonly more: true;
    };
    readonly increment: {
        readonly kind: "step";
        readonly label: "The shop cuts by";
        readonly initial: {
            readonly in: "1/8 yd";
            readonly cm: "10 cm";
        };
        readonly more: true;
    };
    readonly currency: {
        readonly kind: "text";
        readonly label: "Currency";
        readonly optional: true;
        readonly more: true;
        readonly pattern: RegExp;
        readonly example: "EUR";
    };
    readonly bed: {
        readonly kind: "choice";
        readonly label: "Quilt for a bed";
        readonly initial: "none";
        readonly options: {
            readonly none: "no bed";
        };
    };
    readonly width: {
        readonly optional: true;
        readonly kind: "length";
        readonly label: "Quilt width";
    };
    readonly length: {
        readonly optional: true;
        readonly kind: "length";
        readonly label: "Quilt length";
    };
    readonly drop: {
        readonly kind: "length";
        readonly label: "Drop over the edge";
        readonly initial: "12 in";
        readonly zero: true;
        readonly most: "60 in";
        readonly hint: "at both sides and the foot";
    };
    readonly tuck: {
        readonly kind: "length";
        readonly label: "Tuck under the pillows";
        readonly initial: "0";
        readonly zero: true;
        readonly most: "60 in";
    };
    readonly overage: {
        readonly kind: "length";
        readonly label: "Overage, each side";
        readonly initial: "4 in";
        readonly zero: true;
        readonly most: "36 in";
        readonly hint: "what longarm quilters ask for";
    };
    readonly roll: {
        readonly kind: "lengths";
        readonly label: "From a roll this wide";
        readonly optional: true;
        readonly most: "400 in";
        readonly hint: "in place of a package";
    };
    readonly packages: {
        readonly kind: "own";
        readonly label: "Packages";
        readonly optional: true;
        readonly read: (raw: unknown, style: import("../measure/format.js").Style) => import("./packages.js").Package[];
        readonly write: (raw: unknown) => string;
        readonly hint: "the usual sizes where nothing is written";
        readonly more: true;
    };
};
/** Input of {@link reckonBatting}: `width` and `length`, or `bed`, `drop` and `tuck`; `overage`, `packages`, `roll`, … */
export type BattingInput = Input<typeof battingFields>;
/** A rectangle's two sides. */
export interface Size<Length = string> {
    width: Length;
    length: Length;
}
/** A package that is sold, and whether it will do. Lengths are exact inches. */
export interface BattingPackageResult extends Size {
    name: string;
    /** Whether it covers the batting needed, one way round or the other. */
    fits: boolean;
    /** The price of one, where the list gives it. */
    price?: string;
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
    /** Every package, best first: those that fit, by price where the whole list has prices, else by area. */
    packages: BattingPackageResult[];
    /** Ways to cut it from a roll, best first: the fewest lengths, then the least batting. */
    rolls: BattingRoll[];
}
/**
 * Batting for a quilt, from a package or from the roll, and the quilt's size where it is for a bed. Impossible inputs
 * give `errors`, never an exception.
 */
export declare const reckonBatting: (input?: BattingInput) => BattingResult | Refused;
