import { type PropertyDeclarations } from 'lit';
import { type Style } from '../measure/format.js';
import { type Units } from '../measure/units.js';
import { type Answer, type Input, type Problem, type Refused, type Row } from '../reckon/answer.js';
import { type Field } from '../reckon/fields.js';
import { type Calculator, type Flow } from './calculator.js';
import { FormField, type Fault } from './form-field.js';
/** A form field whose value is reckoned: the inputs of its calculator, the result, and the last good one. */
export declare abstract class Reckoned<R extends Answer = Answer> extends FormField {
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
    /** What the worksheet around it gives; an own attribute wins. Set by the worksheet. */
    flow: Flow | undefined;
    /** Finished width. A length as people write it; a bare number is in `units`. */
    width: string | number | undefined;
    /** Finished length. A length as people write it; a bare number is in `units`. */
    length: string | number | undefined;
    /** Usable width of the cloth, selvages off. Default `40 in`. */
    fabricWidth: string | number | undefined;
    /** Seam allowance. The default is the calculator's. */
    seam: string | number | undefined;
    /** How much the material shrinks in the wash, in percent. Default 0. */
    shrinkage: string | number | undefined;
    /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`. Default `1/8 yd`, or `10 cm` in metric. */
    increment: string | undefined;
    /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
    price: string | number | undefined;
    /** Currency, ISO 4217: `EUR`. Default: what the price names, or else none, and prices are bare numbers. */
    currency: string | undefined;
    /** What is reckoned and drawn here. */
    abstract readonly calculator: Calculator<R>;
    /** The last result without errors. */
    protected good: R | undefined;
    connectedCallback(): void;
    disconnectedCallback(): void;
    /** The reckoned result: plain JSON, lengths as exact inches. With `errors` and no `buy` where an input is wrong. */
    get result(): R | Refused;
    /** What a wrong input leaves as the last good result. */
    protected get goodBefore(): R | undefined;
    /** Reckons again though no input changed: what it depends on did. */
    protected renew(): void;
    /** The same, and shows it. */
    protected reckonAgain(): void;
    /** What a form sends: the amount to buy as a decimal number in the shop's unit; empty where an input is wrong. */
    get value(): string;
    /** How lengths are shown here. */
    get lengthStyle(): Style;
    /** The inputs as the calculator takes them. */
    protected reckonInput(): Input;
    protected written(property: string): unknown;
    /** The first thing wrong that a form minds; a blank input only where it is required. */
    protected get wrong(): (Problem & {
        isMissing: boolean;
    }) | undefined;
    protected fault(): Fault | undefined;
    protected get overStock(): string | undefined;
    protected updated(): void;
    /** Whether the reader may switch units: not where an amount or a price goes by the unit it is sold in. */
    protected get switchable(): boolean;
    protected locks(attribute: string): boolean;
    /** That a name in `lock` is none of an input: what was meant stays open. */
    protected strayLock(): string[];
    /** Inputs as they stand now, reckoned rows as they were last good. */
    protected rows(): Row[];
    /** The property that a cell is of, and which entry of it, where each has a cell: `borders2` is the second of `borders`. */
    protected placeOf(id: string): {
        key: string;
        field: Field | undefined;
        at: number;
    };
    /** The entries of a list, as they stand in their cells. */
    protected entries(key: string): string[];
    /** The cell that a problem is in: of a list, the first that cannot be read. */
    protected cellOf({ input }: Problem): string;
    /** Whether a text can be read in a row. */
    protected reads(id: string, text: string): boolean;
    protected labelOf(id: string): string;
}
