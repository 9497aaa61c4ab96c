import type { Answer } from '../ledger/answer.js';
import { isBlank } from '../ledger/field.js';
import { say, type ListSurroundings } from '../calculators/cutting/plan-shape.js';
import { ReadingFace } from './planning-face.js';
import { tableOnServer } from './server.js';
import { sayInFace } from '../words/face-sayings.js';
import { Teller } from '../words/teller.js';
import { CELL_ATTRIBUTES, tableIn, type Table } from './table.js';

/** A note: the price was for what the list was cut from before. */
const OTHER_PRICE = say('otherPrice');

/** A face whose pieces are in the table that its author wrote inside it, or in the cells of the page. */
export abstract class ListFace<A extends Answer = Answer> extends ReadingFace<A> {
  /** The author's own table. */
  protected table: Table | undefined = tableOnServer();

  protected override readonly watched = {
    childList: true,
    characterData: true,
    subtree: true,
    attributeFilter: [...CELL_ATTRIBUTES],
  };

  protected override readInside(): void {
    this.table = tableIn(this);
    this.reckonAgain();
  }

  /** Whether the pieces are still those that the page wrote. */
  abstract get isAsWritten(): boolean;

  /** What the pieces are cut from, if that is not cloth by length. */
  abstract sheet: string | undefined;

  /** What the pieces were cut from when the price was written, if the reader has changed that since. */
  #pricedFor: string | undefined;

  protected override change(key: string, value: unknown): void {
    if (key === 'price') this.#pricedFor = undefined;
    if (key === 'sheet') this.#pricedFor ??= this.sheet ?? '';
    super.change(key, value);
  }

  /**
   * What a worksheet around it says of its fabrics, and of its pieces while they are as the page wrote them. A price that was for
   * something else does not count.
   */
  protected surroundings(): ListSurroundings & { price?: undefined } {
    const { widths, usualWidth, caution, sheets, letters } = (this.flow?.values ?? {}) as ListSurroundings;
    const isOtherPrice = (this.#pricedFor ?? this.sheet ?? '') !== (this.sheet ?? '') && !isBlank(this.price);
    return {
      sheets,
      letters,
      caution: this.#cautions(this.isAsWritten ? caution : undefined, isOtherPrice),
      ...(isBlank(this.fabricWidth) && { widths, usualWidth }),
      ...(isOtherPrice && { price: undefined }),
    };
  }

  #inSheets: { from: Teller; teller: Teller } | undefined;

  /** If fabrics are bought in sheets, a list without sheets of its own is not cut from cloth by length. */
  protected override tellerNow(): Teller {
    const from = super.tellerNow();
    const { sheets } = (this.flow?.values ?? {}) as ListSurroundings;
    if (!Object.keys(sheets ?? {})[0]) return from;
    if (this.#inSheets?.from !== from) this.#inSheets = { from, teller: sayingSheets(from) };
    return this.#inSheets.teller;
  }

  /** A week is of use only in a sew-along. */
  protected override standing(
    settings: Parameters<ReadingFace['standing']>[0],
  ): ReturnType<ReadingFace['standing']> {
    return super.standing(settings.filter(({ id, value }) => id !== 'week' || value));
  }

  #said: unknown[] = [];

  /** What the reader should know about this list. The array stays the same object while its content is the same. */
  #cautions(caution: unknown, isOtherPrice: boolean): unknown {
    const cautions = [caution, isOtherPrice && OTHER_PRICE].filter(Boolean);
    const isSame =
      cautions.length === this.#said.length && cautions.every((one, at) => one === this.#said[at]);
    return isSame ? this.#said : (this.#said = cautions);
  }
}

/** The same in words, with what the fabrics say in place of cloth by length. */
const sayingSheets = (t: Teller): Teller => {
  const { words, style, lang } = t;
  const sheet = { ...words.options['sheet'], '': t.say(sayInFace('asFabrics')) };
  const hint = t.say(sayInFace('asFabricsHint', { hint: t.hint('sheet') }));
  return new Teller(
    { ...words, options: { ...words.options, sheet }, hints: { ...words.hints, sheet: hint } },
    style,
    lang,
  );
};
