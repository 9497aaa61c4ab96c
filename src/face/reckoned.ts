import { isServer, type PropertyDeclarations } from 'lit';
import type { Calculator } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import { isBlank, isMissing, readField, say, textOf, type Field, type Label } from '../ledger/field.js';
import type { Input } from '../ledger/ledger.js';
import { lengthField } from '../ledger/lengths.js';
import { unlessRefused, type Issue } from '../ledger/refusal.js';
import { upTo, exact } from '../measure/exact.js';
import { decimal, type Style } from '../measure/format.js';
import type { Message } from '../measure/message.js';
import { placesOf } from '../measure/parse.js';
import { unitsOr, writesComma, type Units } from '../measure/units.js';
import { sayInFace } from '../words/face-sayings.js';
import { wordsIn } from '../words/languages.js';
import { Teller, type Vocabulary } from '../words/teller.js';
import type { Refused, Result, WorkingRow } from '../words/told.js';
import type { Flow } from '../workbook/flow.js';
import { attributeOf } from './calculator.js';
import { FormField, type Fault } from './form-field.js';
import { followLanguage, languageAt, leaveLanguage } from './language.js';
import { goodOf, Outcome, type Good } from './outcome.js';
import { isAsServed } from './server.js';
import { overStock } from './stock.js';

/** A form field whose value is reckoned: the inputs of its calculator, the result, and the last good one. */
export abstract class Reckoned<A extends Answer = Answer> extends FormField {
  static override properties: PropertyDeclarations = {
    units: { reflect: true },
    lock: { reflect: true },
    fabric: { reflect: true },
    shown: { attribute: false },
    max: {},
    measured: { attribute: false },
    flow: { attribute: false },
    words: { attribute: false },
  };

  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  declare units: 'in' | 'cm' | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  declare shown: Units | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  declare lock: string | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  declare fabric: string | undefined;
  /**
   * The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
   * buy is larger, a sentence says so, and a form is not sent. Default none.
   */
  declare max: string | number | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  declare measured: Record<string, string> | undefined;
  /**
   * Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
   * words of the language.
   */
  declare words: Record<string, string> | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  declare flow: Flow | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  declare width: string | number | undefined;
  /** Finished length. A length as people write it; a number alone is in `units`. */
  declare length: string | number | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  declare fabricWidth: string | number | undefined;
  /** Seam allowance. The default is the calculator's. */
  declare seam: string | number | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  declare shrinkage: string | number | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  declare increment: string | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  declare price: string | number | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  declare currency: string | undefined;

  /** The calculator. */
  abstract readonly calculator: Calculator<A>;
  /** Its words in English. */
  protected abstract readonly english: Vocabulary;

  #input: Input | undefined;
  #outcome: Outcome<A> | undefined;
  /** The last outcome with an answer. */
  protected good: Good<A> | undefined;
  #teller: Teller | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    followLanguage(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    leaveLanguage(this);
  }

  /** The result: plain JSON, with lengths as exact inches. If an input is wrong, it has `errors` and no `buy`. */
  get result(): Result<A> | Refused {
    return this.outcome.result;
  }

  /** The outcome of the inputs as they are now. */
  get outcome(): Outcome<A> {
    if (this.held) return this.held.outcome;
    if (!this.hasUpdated) settleAround(this);
    const input = this.reckonInput();
    const { calculator, teller } = this;
    const last = this.#outcome;
    if (last && sameInput(input, this.#input)) {
      if (last.t.words === teller.words) return last;
      // The words of its language have come: the same result in other words.
      return this.#keep(new Outcome(last.reckoning, calculator.fields, teller));
    }
    this.#input = input;
    return this.#keep(new Outcome(calculator.reckon(input), calculator.fields, teller));
  }

  /** What it comes to, while nothing that this depends on changes: every row asks for it. */
  protected held: { outcome: Outcome<A>; teller: Teller } | undefined;

  protected hold(work: () => void): void {
    this.held ??= { outcome: this.outcome, teller: this.teller };
    try {
      work();
    } finally {
      this.held = undefined;
    }
  }

  override requestUpdate(...of: Parameters<FormField['requestUpdate']>): void {
    // What is taken out of a page as it is drawn may lose the focus, and so change something.
    this.held = undefined;
    super.requestUpdate(...of);
  }

  protected override update(...of: Parameters<FormField['update']>): void {
    this.hold(() => super.update(...of));
  }

  protected override send(): void {
    this.hold(() => super.send());
  }

  #keep(outcome: Outcome<A>): Outcome<A> {
    this.#outcome = outcome;
    this.good = goodOf(outcome) ?? this.goodBefore;
    return outcome;
  }

  /** The answer as it is now, or undefined if an input is wrong. */
  get answer(): A | undefined {
    return this.outcome.reckoning.own;
  }

  /** The teller, which makes the sentences. */
  get teller(): Teller {
    return this.held?.teller ?? this.tellerNow();
  }

  /** The same, as it is now. */
  protected tellerNow(): Teller {
    const { calculator, english, lengthStyle } = this;
    const lang = this.#language;
    const words = this.#inOwnWords(wordsIn(lang, calculator.name, english));
    const last = this.#teller;
    if (last?.words === words && last.lang === lang && sameInput(lengthStyle, last.style)) return last;
    return (this.#teller = new Teller(words, lengthStyle, lang));
  }

  #own: { from: Vocabulary; words: unknown; with: Vocabulary } | undefined;

  /** The same with the author's own words for labels. */
  #inOwnWords(from: Vocabulary): Vocabulary {
    const { words } = this;
    if (!words) return from;
    if (this.#own?.from !== from || this.#own.words !== words)
      this.#own = { from, words, with: { ...from, labels: { ...from.labels, ...words } } };
    return this.#own.with;
  }

  /** The last outcome with an answer, shown while an input is wrong. */
  protected get goodBefore(): Good<A> | undefined {
    return this.good;
  }

  /** Reckons again after something else than an input changed. */
  protected renew(): void {
    this.#input = undefined;
    // Before it is drawn, only a form needs the result.
    if (this.hasUpdated || this.form) this.send();
  }

  /** The same, and shows it. */
  protected reckonAgain(): void {
    this.renew();
    this.requestUpdate();
  }

  /** The value for a form: the amount to buy, as a decimal number in the shop's unit. Empty if an input is wrong. */
  get value(): string {
    const { answer } = this;
    // A third of a yard has endless decimals. The value may not be less than the amount.
    return answer ? decimal(upTo(answer.buy.amount, exact(1, 10_000)), 4) : '';
  }

  /** How lengths are shown here. */
  get lengthStyle(): Style {
    if (this.held) return this.held.teller.style;
    const given = this.flow?.values;
    const bare = unitsOr(this.units ?? given?.['units'], 'in');
    const units = unitsOr(this.shown ?? given?.['shown'], bare);
    return { units, comma: writesComma(this.#language), bare };
  }

  get #language(): string {
    return isAsServed(this) ? (this.getAttribute('lang') ?? 'en') : languageAt(this);
  }

  /** The inputs as the calculator takes them. */
  reckonInput(): Input {
    const { own, flow, calculator } = this;
    const input: Input = {
      fabricWidths: isBlank(this.fabricWidth) ? flow?.values['fabricWidths'] : undefined,
      lang: this.#language,
      measured: this.measured,
    };
    for (const key of ['units', 'shown', 'shared', 'apart', ...Object.keys(calculator.fields)])
      (input as Record<string, unknown>)[key] = own[key] ?? flow?.values[key];
    return input;
  }

  protected override written(property: string): unknown {
    const written = this.getAttribute(attributeOf(property));
    return written === null ? undefined : this.calculator.fields[property]?.kind === 'flag' || written;
  }

  /** The first error that stops a form. A blank input stops it only with `required`. */
  protected get wrong(): Issue | undefined {
    return this.outcome.reckoning.issues.find((issue) => this.required || !isMissing(issue));
  }

  protected override fault(): Fault | undefined {
    const { wrong, teller } = this;
    if (wrong) return { flag: isMissing(wrong) ? 'valueMissing' : 'badInput', message: teller.say(wrong) };
    const over = this.overStock;
    return over ? { flag: 'rangeOverflow', message: teller.say(over) } : undefined;
  }

  protected get overStock(): Message | undefined {
    const { answer, calculator, lengthStyle, max } = this;
    return answer && overStock(max, answer, calculator, lengthStyle);
  }

  protected override updated(): void {
    this.send();
    // Tells a worksheet around it, for every kind of change.
    this.dispatchEvent(new Event('reckoned', { bubbles: true }));
  }

  /** Whether the reader may switch units. She may not if a price or a form depends on the unit of sale. */
  protected get switchable(): boolean {
    return !this.isSent && !this.flow && isBlank(this.price) && !this.locks('units');
  }

  /** Whether a form may depend on its value. */
  protected get isSent(): boolean {
    return !!this.name;
  }

  /** The names of the locked attributes. */
  get #locked(): string[] {
    return (
      textOf(this.lock)
        .toLowerCase()
        .match(/[^\s,]+/g) ?? []
    );
  }

  protected locks(attribute: string): boolean {
    return this.#locked.includes(attribute);
  }

  /** Warns about a name in `lock` that is not an input, because the input that the author meant stays open. */
  protected strayLock(): Message[] {
    const names = ['units', ...Object.keys(this.calculator.fields).map(attributeOf)];
    return this.#locked
      .filter((name) => !names.includes(name))
      .map((text) => sayInFace('strayLock', { text, names: names.slice(-2) }));
  }

  /** The rows: inputs as they are now, reckoned rows as in the last good answer. */
  protected rows(): WorkingRow[] {
    const { result, good } = this;
    const rows = result.working;
    if (!result.errors || !good) return rows;
    return good.result.working.map((row) => rows.find(({ id }) => id === row.id) ?? row);
  }

  /** The property of a cell, and which entry, if each entry has a cell: `borders2` is the second of `borders`. */
  protected placeOf(id: string): { key: string; field: Field | undefined; at: number } {
    const { fields } = this.calculator;
    const [, list = id, number = 1] = fields[id] ? [] : (/^(\D+)(\d+)$/.exec(id) ?? []);
    const key = list === id || fields[list]?.each ? list : id;
    return { key, field: fields[key], at: +number - 1 };
  }

  /** The entries of a list, as the cells show them. */
  protected entries(key: string): string[] {
    return placesOf(this.rows().find(({ id }) => id === key)?.value ?? '', this.lengthStyle.comma);
  }

  /** The cell with the problem. In a list, the first entry that cannot be read. */
  protected cellOf({ input }: Pick<Issue, 'input'>): string {
    const field = this.calculator.fields[input];
    const at = field?.each
      ? this.entries(input).findIndex((entry) => !entry || !this.reads(input, entry))
      : 0;
    return at > 0 ? `${input}${at + 1}` : input;
  }

  /** Whether a row can read this text. */
  protected reads(id: string, text: string): boolean {
    const { field = lengthField() } = this.placeOf(id);
    return unlessRefused(
      () => (readField<unknown>(field, text, this.lengthStyle, id), true),
      () => false,
    );
  }

  /** The name of a cell. */
  protected labelOf(id: string): string {
    const { field, key, at } = this.placeOf(id);
    if (field?.each) return this.teller.label(entryOf(key, at));
    return this.rows().find((row) => row.id === id)?.label ?? this.teller.label(id);
  }
}

/** What an entry of a list is called, by its place. */
export const entryOf = (of: string, at: number): Label => say('entry', { of, number: at + 1 });

/** Lets the worksheet around a part give it its sizes, if it has not done so yet. */
const settleAround = (part: Element): void => {
  const around = isServer ? undefined : part.closest<Element & { settle?: () => void }>('quilt-worksheet');
  around?.settle?.();
};

const sameInput = <T extends object>(a: T, b: T | undefined): boolean => {
  if (!b) return false;
  for (const key in a) if (a[key] !== b[key]) return false;
  return true;
};
