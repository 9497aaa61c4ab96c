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
export declare const say: <Code extends "tooLong" | "notLength" | "twoNumbers" | "unitFirst" | "noComma" | "twoReadings" | "openBracket" | "divideByZero" | "notPlain" | "tooFine" | "notStep" | "stepRange">(code: Code, ...[values]: ReadingSayings[Code] extends undefined ? [] : [values: ReadingSayings[Code]]) => Message<Code>;
export interface Reading {
    /** What a bare number is in. Default `in`. */
    units?: Units;
    /** The same, where lengths are shown in other units. */
    bare?: Units | undefined;
    /** The page's language marks decimals with a comma. Default false. */
    comma?: boolean;
}
/**
 * Reads what a person writes for a length: `52`, `52.5`, `52 1/2`, `52-1/2`, `52½`, `52 1/2"`, `4' 4"`, `1 yd 16 in`,
 * `132 cm`, and simple arithmetic with them (`3 * 12 1/2 + 4`, a leading `=` allowed; `x` and `×` multiply too).
 *
 * Where a sign could mean two things, spaces decide:
 * - a hyphen with no space on either side joins a whole number to a fraction, or feet to inches (`52-1/2` is
 *   fifty-two and a half, `4'-6"` four foot six); any other hyphen takes away (`52 - 1/2`, `8-3`);
 * - a slash with no space on either side, between whole numbers, is a fraction, and so is any slash between the last two of
 *   three (`60 1 / 2`, `60-1 / 2`); any other slash divides;
 * - a point marks decimals everywhere, a comma only where the page's language writes so; nothing marks thousands.
 *
 * The value is exact inches. Never throws: a problem is a message.
 */
export declare const parseLength: (text: string, { units, comma, bare }?: Reading) => Parsed;
/** Whether a text may still become what can be read there, as `61 1/` may while `61 1/2` is typed. */
export declare const isBegun: (text: string, reads: (text: string) => boolean) => boolean;
/** A unit that stands once, behind the last of several lengths, holds for all: `60` beside `80 cm` is 60 cm. */
export declare const sameUnit: (first: string, second: string) => string;
/**
 * The same text with its unit, for where a bare number means another: `58 cm`, `(3 * 12 1/2) cm`; one unit holds for all of
 * several. A text with a unit of its own, or without a number, stays.
 */
export declare const inUnit: (text: string, unit: Units, several?: boolean) => string;
/** The places of a written list, as {@link splitList} finds them: also those where nothing stands, but for one at its end. */
export declare const placesOf: (text: string, comma?: boolean) => string[];
/**
 * Splits a written list. A semicolon or a comma separates, except a comma between digits where the page's language
 * marks decimals with it ("2, 4,5" is two and four and a half there).
 */
export declare const splitList: (text: string, comma?: boolean) => string[];
/** Splits "60 x 80" (or × or "by") into its two sides; undefined when there are not two. */
export declare const splitSize: (text: string) => [string, string] | undefined;
/** The two sides of a quilt, where they stand in the place of one: `60x72`. A factor below 10 multiplies: `5 x 12`. */
export declare const bothSides: (text: string, reading: Reading) => [string, string] | undefined;
