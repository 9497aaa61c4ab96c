import { type Exact } from './exact.js';
import { type Message } from './message.js';
import { type Units } from './units.js';
/** What was read, or why it could not be. */
export type Parsed<Value = Exact> = {
    ok: true;
    value: Value;
} | {
    ok: false;
    problem: Message;
};
/** Why a text cannot be read as a length, or as the step that a shop cuts in. */
export interface ReadingSayings {
    notLength: {
        text: string;
    };
    twoNumbers: undefined;
    unitFirst: undefined;
    noComma: undefined;
    twoReadings: {
        text: string;
    };
    openBracket: undefined;
    divideByZero: undefined;
    notPlain: undefined;
    tooLong: undefined;
    tooFine: undefined;
    notStep: {
        text: string;
    };
    stepRange: undefined;
}
export declare const say: <Code extends "divideByZero" | "notLength" | "twoNumbers" | "unitFirst" | "noComma" | "twoReadings" | "openBracket" | "notPlain" | "tooLong" | "tooFine" | "notStep" | "stepRange">(code: Code, ...[values]: ReadingSayings[Code] extends undefined ? [] : [values: ReadingSayings[Code]]) => Message<Code>;
export interface Reading {
    /** The unit of a number alone. Default `in`. */
    units?: Units;
    /** The same, if the page shows lengths in other units. */
    bare?: Units | undefined;
    /** The page's language marks decimals with a comma. Default false. */
    comma?: boolean;
}
/**
 * Reads what a person writes for a length: `52`, `52.5`, `52 1/2`, `52-1/2`, `52½`, `52 1/2"`, `4' 4"`, `1 yd 16 in`,
 * `132 cm`, and simple arithmetic with them (`3 * 12 1/2 + 4`, a leading `=` allowed; `x` and `×` multiply too).
 *
 * If a sign could mean two things, spaces decide:
 * - a hyphen with no space on either side joins a whole number to a fraction, or feet to inches (`52-1/2` is
 *   fifty-two and a half, `4'-6"` four foot six); any other hyphen takes away (`52 - 1/2`, `8-3`);
 * - a slash with no space on either side, between whole numbers, is a fraction, and so is any slash between the last two of
 *   three (`60 1 / 2`, `60-1 / 2`); any other slash divides;
 * - a point marks decimals everywhere, a comma only where the page's language writes so; nothing marks thousands.
 *
 * The value is exact inches. Never throws: a problem is a message.
 */
export declare const parseLength: (text: string, { units, comma, bare }?: Reading) => Parsed;
/** Whether a text can still become something readable, as `61 1/` does when somebody types `61 1/2`. */
export declare const isBegun: (text: string, reads: (text: string) => boolean) => boolean;
/** If only the last of several lengths has a unit, it counts for all of them: `60` beside `80 cm` is 60 cm. */
export declare const sameUnit: (first: string, second: string) => string;
/**
 * Adds the unit to a text, for a place where a number alone means another unit: `58 cm`, `(3 * 12 1/2) cm`. One unit counts for
 * all lengths of a list. If a text has a unit already, or no number, it stays the same.
 */
export declare const inUnit: (text: string, unit: Units, several?: boolean) => string;
/** The entries of a written list, as {@link splitList} finds them. Empty ones count too, except one at the end. */
export declare const placesOf: (text: string, comma?: boolean) => string[];
/**
 * Splits a written list at semicolons and commas. If the page's language writes decimals with a comma, a comma between digits
 * does not split ("2, 4,5" is two, and four and a half there).
 */
export declare const splitList: (text: string, comma?: boolean) => string[];
/** Splits "60 x 80" (or × or "by") into its two sides, or gives undefined if there are not two. */
export declare const splitSize: (text: string) => [string, string] | undefined;
/** Both sides of a quilt, if somebody wrote them in the place of one: `60x72`. A number below 10 multiplies: `5 x 12`. */
export declare const bothSides: (text: string, reading: Reading) => [string, string] | undefined;
