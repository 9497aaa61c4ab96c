import { drawBorders } from '../../drawing/borders.js';
import { lengthOf } from '../../drawing/picture.js';
import type { Style } from '../../measure/format.js';
import { bordersFields, reckonBorders, type Border, type BordersResult } from '../../reckon/borders.js';
import { propertiesOf, type Calculator, type Listing, type Take } from '../../face/calculator.js';
import { QuiltSheet } from '../../face/sheet.js';

const PLAN_WORDS = {
  joined: 'across, all joined into one and cut up',
  separate: 'across, each border cut on its own',
  along: 'along the cloth, without joins',
};

const plans = ({ borders }: BordersResult, style: Style): Listing => ({
  caption: 'Ways to cut the strips',
  head: ['Border', 'Strips', 'Joins', 'Cloth'],
  rows: borders.flatMap(({ plans }, at) =>
    plans.map(({ plan, strips, joins, fabric }) => [
      `${at + 1}: ${PLAN_WORDS[plan]}`,
      `${strips}`,
      `${joins}`,
      lengthOf(fabric, style),
    ]),
  ),
});

const strips = ({ working }: BordersResult): Listing => ({
  caption: 'Strips for the borders',
  toCut: 'on paper',
  rows: working.filter(({ id }) => /\dStrips$/.test(id)).map(({ label, value, how }) => [label, value, how]),
});

/** A border's cloth: whole strips across it, or its pieces along it; strips of two widths lie as the border says itself. */
const takeOf = (
  { plan, strips, fabric, cloth }: Border,
  result: BordersResult,
  letter: string,
  at: number,
): Take => {
  const cuts = result.cuts.filter(({ piece }) => piece.startsWith(`border ${at + 1},`));
  const own = cuts.map((cut) => ({ ...cut, turn: false }));
  const alike = new Set(own.map(({ width }) => width)).size === 1;
  const across = { width: cloth.width, length: own[0]!.width, count: strips, turn: false };
  return {
    ...cloth,
    title: `Border ${at + 1}`,
    fabric: letter,
    need: fabric,
    cuts,
    pieces: plan === 'along' ? own : alike ? [across] : [],
  };
};

/**
 * Borders round a quilt top: cut lengths, strips, cloth, and the finished size.
 *
 * @tagname quilt-borders
 */
export class QuiltBorders extends QuiltSheet<BordersResult> {
  static override properties = propertiesOf(bordersFields);

  /** Finished widths from the inside out: `2, 4 1/2`. Required unless `target` is given. */
  declare borders: string | number | undefined;
  /** `sides-first`, `ends-first`, `squares` or `mitred`; one for all, or one per border with commas. Default `sides-first`. */
  declare corners: string | undefined;
  /** `across` (strips from selvage to selvage) or `along` (unpieced, beside the selvage). Default `across`. */
  declare grain: 'across' | 'along' | undefined;
  /** The size wanted: `60 x 80`. One more border makes up what is missing. Default none. */
  declare target: string | undefined;
  /** How strips are joined: `diagonal` (at 45°) or `straight`. Default `diagonal`. */
  declare join: 'diagonal' | 'straight' | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;

  override readonly calculator: Calculator<BordersResult> = {
    title: 'Borders',
    fields: bordersFields,
    reckon: reckonBorders,
    finishes: 'borders',
    draw: (result, style) => [drawBorders(result, style)],
    listings: (result, style) => [plans(result, style), strips(result)],
    takes: (result, letters) =>
      result.borders.map((border, at) => takeOf(border, result, letters[at] ?? letters.at(-1) ?? '', at)),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-borders': QuiltBorders;
  }
}
