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
    /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
    units: 'in' | 'cm' | undefined;
    /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
    shown: Units | undefined;
    /** Inputs the reader may not change: attribute names with spaces between. Default none. */
    lock: string | undefined;
    /** The letter of the fabric this part is cut from. Default none. */
    fabric: string | undefined;
    /**
     * The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
     * buy is larger, a sentence says so, and a form is not sent. Default none.
     */
    max: string | number | undefined;
    /** Values typed over reckoned rows, by the row's id. Default none. */
    measured: Record<string, string> | undefined;
    /**
     * Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
     * words of the language.
     */
    words: Record<string, string> | undefined;
    /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
    flow: Flow | undefined;
    /** Finished width. A length as people write it; a number alone is in `units`. */
    width: string | number | undefined;
    /** Finished length. A length as people write it; a number alone is in `units`. */
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
    /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
    currency: string | undefined;
    /** The calculator. */
    abstract readonly calculator: Calculator<A>;
    /** Its words in English. */
    protected abstract readonly english: Vocabulary;
    /** The last outcome with an answer. */
    protected good: Good<A> | undefined;
    connectedCallback(): void;
    disconnectedCallback(): void;
    /** The result: plain JSON, with lengths as exact inches. If an input is wrong, it has `errors` and no `buy`. */
    get result(): Result<A> | Refused;
    /** The outcome of the inputs as they are now. */
    get outcome(): Outcome<A>;
    /** What it comes to, while nothing that this depends on changes: every row asks for it. */
    protected held: {
        outcome: Outcome<A>;
        teller: Teller;
    } | undefined;
    protected hold(work: () => void): void;
    requestUpdate(...of: Parameters<FormField['requestUpdate']>): void;
    protected update(...of: Parameters<FormField['update']>): void;
    protected send(): void;
    /** The answer as it is now, or undefined if an input is wrong. */
    get answer(): A | undefined;
    /** The teller, which makes the sentences. */
    get teller(): Teller;
    /** The same, as it is now. */
    protected tellerNow(): Teller;
    /** The last outcome with an answer, shown while an input is wrong. */
    protected get goodBefore(): Good<A> | undefined;
    /** Reckons again after something else than an input changed. */
    protected renew(): void;
    /** The same, and shows it. */
    protected reckonAgain(): void;
    /** The value for a form: the amount to buy, as a decimal number in the shop's unit. Empty if an input is wrong. */
    get value(): string;
    /** How lengths are shown here. */
    get lengthStyle(): Style;
    /** The inputs as the calculator takes them. */
    reckonInput(): Input;
    protected written(property: string): unknown;
    /** The first error that stops a form. A blank input stops it only with `required`. */
    protected get wrong(): Issue | undefined;
    protected fault(): Fault | undefined;
    protected get overStock(): Message | undefined;
    protected updated(): void;
    /** Whether the reader may switch units. She may not if a price or a form depends on the unit of sale. */
    protected get switchable(): boolean;
    /** Whether a form may depend on its value. */
    protected get isSent(): boolean;
    protected locks(attribute: string): boolean;
    /** Warns about a name in `lock` that is not an input, because the input that the author meant stays open. */
    protected strayLock(): Message[];
    /** The rows: inputs as they are now, reckoned rows as in the last good answer. */
    protected rows(): WorkingRow[];
    /** The property of a cell, and which entry, if each entry has a cell: `borders2` is the second of `borders`. */
    protected placeOf(id: string): {
        key: string;
        field: Field | undefined;
        at: number;
    };
    /** The entries of a list, as the cells show them. */
    protected entries(key: string): string[];
    /** The cell with the problem. In a list, the first entry that cannot be read. */
    protected cellOf({ input }: Pick<Issue, 'input'>): string;
    /** Whether a row can read this text. */
    protected reads(id: string, text: string): boolean;
    /** The name of a cell. */
    protected labelOf(id: string): string;
}
/** What an entry of a list is called, by its place. */
export declare const entryOf: (of: string, at: number) => Label;
