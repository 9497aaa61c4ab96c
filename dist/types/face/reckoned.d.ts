import { type PropertyDeclarations } from 'lit';
import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import { type Field, type Label } from '../ledger/field.js';
import type { Input } from '../ledger/ledger.js';
import { type Issue } from '../ledger/refusal.js';
import { type Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import { type Units } from '../measure/units.js';
import { Teller, type Vocabulary } from '../words/teller.js';
import type { Refused, Result, WorkingRow } from '../words/told.js';
import type { Flow } from '../workbook/flow.js';
import { FormField, type Fault } from './form-field.js';
import { Outcome, type Good } from './outcome.js';
/** A form field whose value is reckoned: the inputs of its calculator, the result, and the last good one. */
export declare abstract class Reckoned<A extends Answer = Answer> extends FormField {
    #private;
    static properties: PropertyDeclarations;
    /** What bare numbers are in and answers are shown in: `in` or `cm`. Default `in`. */
    units: 'in' | 'cm' | undefined;
    /** What the reader sees lengths in, `in` or `cm`, where she switched. Default: `units`. */
    shown: Units | undefined;
    /** Inputs the reader may not change: attribute names with spaces between. Default none. */
    lock: string | undefined;
    /** The letter of the fabric this part is cut from. Default none. */
    fabric: string | undefined;
    /**
     * The shop's stock: a length (`6 yd`, `5 m`), or a number in the unit of the amount to buy: yards, metres, packages, fat
     * quarters. An amount above it is shown with a sentence, and is not valid in a form. Default none.
     */
    max: string | number | undefined;
    /** Values typed over reckoned rows, by the row's id. Default none. */
    measured: Record<string, string> | undefined;
    /**
     * Your own words for inputs and rows, by the row's id as `result.working` has it: `{ panels: 'Lengths of cloth' }`. Default: those
     * of the language.
     */
    words: Record<string, string> | undefined;
    /** What the worksheet around it gives; an own attribute wins. Set by the worksheet. */
    flow: Flow | undefined;
    /** Finished width. A length as people write it; a bare number is in `units`. */
    width: string | number | undefined;
    /** Finished length. A length as people write it; a bare number is in `units`. */
    length: string | number | undefined;
    /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
    fabricWidth: string | number | undefined;
    /** Seam allowance. The default is the calculator's. */
    seam: string | number | undefined;
    /** How much the material shrinks in the wash, in percent. Default 0. */
    shrinkage: string | number | undefined;
    /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
    increment: string | undefined;
    /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
    price: string | number | undefined;
    /** Currency, ISO 4217: `EUR`. Default: what the price names, or else none, and prices are bare numbers. */
    currency: string | undefined;
    /** What is reckoned and drawn here. */
    abstract readonly calculator: Calculator<A>;
    /** Its words in English. */
    protected abstract readonly english: Vocabulary;
    /** The last outcome with an answer. */
    protected good: Good<A> | undefined;
    connectedCallback(): void;
    disconnectedCallback(): void;
    /** The reckoned result: plain JSON, lengths as exact inches. With `errors` and no `buy` where an input is wrong. */
    get result(): Result<A> | Refused;
    /** What the inputs come to as they are now. */
    get outcome(): Outcome<A>;
    /** The answer as it is now; undefined where an input is wrong. */
    get answer(): A | undefined;
    /** What makes sentences here. */
    get teller(): Teller;
    /** What a wrong input leaves as the last outcome with an answer. */
    protected get goodBefore(): Good<A> | undefined;
    /** Reckons again though no input changed: what it depends on did. */
    protected renew(): void;
    /** The same, and shows it. */
    protected reckonAgain(): void;
    /** What a form sends: the amount to buy as a decimal number in the shop's unit; empty where an input is wrong. */
    get value(): string;
    /** How lengths are shown here. */
    get lengthStyle(): Style;
    /** The inputs as the calculator takes them. */
    reckonInput(): Input;
    protected written(property: string): unknown;
    /** The first thing wrong that a form minds; a blank input only where it is required. */
    protected get wrong(): Issue | undefined;
    protected fault(): Fault | undefined;
    protected get overStock(): Message | undefined;
    protected updated(): void;
    /** Whether the reader may switch units: not where an amount or a price goes by the unit it is sold in. */
    protected get switchable(): boolean;
    protected locks(attribute: string): boolean;
    /** That a name in `lock` is none of an input: what was meant stays open. */
    protected strayLock(): Message[];
    /** Inputs as they stand now, reckoned rows as they were last good. */
    protected rows(): WorkingRow[];
    /** The property that a cell is of, and which entry of it, where each has a cell: `borders2` is the second of `borders`. */
    protected placeOf(id: string): {
        key: string;
        field: Field | undefined;
        at: number;
    };
    /** The entries of a list, as they stand in their cells. */
    protected entries(key: string): string[];
    /** The cell that a problem is in: of a list, the first that cannot be read. */
    protected cellOf({ input }: Pick<Issue, 'input'>): string;
    /** Whether a text can be read in a row. */
    protected reads(id: string, text: string): boolean;
    /** What a cell is called. */
    protected labelOf(id: string): string;
}
/** What an entry of a list is called, by its place. */
export declare const entryOf: (of: string, at: number) => Label;
