import { selvagesOf, type Cloth } from '../../ledger/cloth.js';
import { isBlank, textOf } from '../../ledger/field.js';
import { readLength } from '../../ledger/lengths.js';
import { Purchase } from '../../ledger/purchase.js';
import { inches } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { refuse } from '../../ledger/refusal.js';
import { exact, least, most, ONE, type Exact } from '../../measure/exact.js';
import { ownUnits, type Style } from '../../measure/format.js';
import { splitSize } from '../../measure/parse.js';
import { SHEETS, type SheetKind, type SheetSize } from '../../trade/cloths.js';
import { say, type ListSurroundings, type Sheet, type SheetLedger, type SheetsOfList } from './plan-shape.js';

/** The kinds whose name says their size. */
const SAY_THEIR_SIZE: SheetKind[] = ['fat-quarter', 'fat-eighth'];

/** The sheet of this name, if there is one. */
const sheetCalled = (name: string, style: Style): { kind: SheetKind; size: SheetSize } | undefined => {
  const sheet = Object.hasOwn(SHEETS, name) ? SHEETS[name] : undefined;
  return sheet && { kind: sheet.kind, size: sheet.size[ownUnits(style)] };
};

/** The sides of a sheet, as somebody wrote them or by its name. Throws a `Refusal`. */
const sidesOf = (written: string, style: Style): Size & { kind: SheetKind } => {
  const named = sheetCalled(written.toLowerCase().replace(/\s+/g, '-'), style);
  const [first, second] = named
    ? [named.size.width, named.size.height]
    : (splitSize(written) ?? refuse(say('notSheet', { text: written })));
  const sides = {
    width: readLength(first, style),
    length: readLength(second, style),
    kind: named?.kind ?? 'sheet',
  };
  return least(sides.width, sides.length).gt(0) ? sides : refuse(say('sheetOfNothing'));
};

/** How a sheet lies, and how much a wash leaves of it. */
interface Lying {
  oneWay: boolean;
  kept: Exact;
}

/** Reads the name of a sheet, or a size. Throws a `Refusal`. */
export const readSheet = (written: string, style: Style, { oneWay, kept }: Lying): Sheet => {
  const { kind, ...sold } = sidesOf(written, style);
  const longer = most(sold.width, sold.length);
  // A one-way print has to lie as somebody wrote it. Otherwise the longer side goes across, for fewer cuts.
  const { width, length } = oneWay ? sold : { width: longer, length: least(sold.width, sold.length) };
  return {
    width: width.mul(kept),
    length: length.mul(kept),
    kind,
    sold: SAY_THEIR_SIZE.includes(kind) ? undefined : sold,
  };
};

/** The same entry of a record that a page wrote, if it has one. */
const entryOf = (all: Record<string, unknown> | undefined, key: string): string =>
  all && Object.hasOwn(all, key) && !isBlank(all[key]) ? textOf(all[key]).trim() : '';

/** What a list says that it is cut from, and what the fabrics around it say. Reads each sheet once. */
export const sheetsOf = (ledger: SheetLedger, { sheets, letters }: ListSurroundings): SheetsOfList => {
  const { sheet: written, oneWay, shrinkage } = ledger.values;
  const known = new Map<string, Sheet>();
  const sheetOf = (text: string, fabric?: string): Sheet => {
    const before = known.get(text);
    if (before) return before;
    const sheet = ledger.blame(
      'sheet',
      () => readSheet(text, ledger.style, { oneWay, kept: ONE.sub(shrinkage) }),
      (says) => (fabric === undefined ? says : say('sheetOfFabric', { fabric, says })),
    );
    const { sold } = sheet;
    if (sold) ledger.notes.push(...selvagesOf(most(sold.width, sold.length), ledger.style));
    known.set(text, sheet);
    return sheet;
  };
  const own = written ? sheetOf(written) : undefined;
  const of = (fabric: string): Sheet | undefined => {
    const letter = fabric || (Array.isArray(letters) ? textOf(letters[0]) : '');
    const text = own ? '' : entryOf(sheets, letter);
    return own ?? (text ? sheetOf(text, letter) : undefined);
  };
  return { own, of };
};

/** A sheet as the cloth that a plan is made on. */
export const onSheet = ({ width, length }: Sheet): { width: Exact; height: Exact } => ({
  width,
  height: length,
});

/** A number of sheets to buy. */
export const sheetsToBuy = ({ kind, sold, length }: Sheet, count: number): Purchase =>
  new Purchase(length.mul(count), exact(count), 'sheet', say('sheets', { count, kind, size: sold }));

/** Whether two sheets are the same, after the wash too. */
export const isSameSheet = (a: Sheet, b: Sheet): boolean =>
  a.kind === b.kind && a.width.equals(b.width) && a.length.equals(b.length);

/** Whether a shop sells two sheets as the same, before the wash. */
export const isSoldAs = (a: Sheet, b: Sheet): boolean =>
  a.kind === b.kind &&
  (!a.sold || !b.sold || (a.sold.width.equals(b.sold.width) && a.sold.length.equals(b.sold.length)));

/** A sheet as cloth, in its size after the wash. */
export const clothOfSheet = ({ width }: Sheet): Cloth => ({
  width: inches(width),
  sold: inches(width),
  kept: ONE,
  washed: (length) => length,
  toBuy: (length) => length,
});
