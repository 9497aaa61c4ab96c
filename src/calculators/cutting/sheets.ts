import { selvagesOf } from '../../ledger/cloth.js';
import { readLength } from '../../ledger/lengths.js';
import type { Size } from '../../ledger/quilt.js';
import { least, most, type Exact } from '../../measure/exact.js';
import { ownUnits, type Style } from '../../measure/format.js';
import { splitSize } from '../../measure/parse.js';
import { SHEETS, type SheetKind, type SheetSize } from '../../trade/cloths.js';
import type { Sheet } from './plan-shape.js';
import { say, type CuttingLedger } from './shape.js';

/** The kinds whose name says their size. */
const SAY_THEIR_SIZE: SheetKind[] = ['fat-quarter', 'fat-eighth'];

/** The sheet of this name, if there is one. */
const sheetCalled = (name: string, style: Style): { kind: SheetKind; size: SheetSize } | undefined => {
  const sheet = Object.hasOwn(SHEETS, name) ? SHEETS[name] : undefined;
  return sheet && { kind: sheet.kind, size: sheet.size[ownUnits(style)] };
};

/** The sides of a sheet, as somebody wrote them or by its name. */
const sidesOf = (ledger: CuttingLedger, written: string): Size & { kind: SheetKind } => {
  const key = written.toLowerCase().replace(/\s+/g, '-');
  const named = sheetCalled(key, ledger.style);
  const [first, second] = named
    ? [named.size.width, named.size.height]
    : (splitSize(written) ?? ledger.refuse('sheet', say('notSheet', { text: written })));
  const read = (side: string): Exact => ledger.blame('sheet', () => readLength(side, ledger.style));
  const sides = { width: read(first), length: read(second), kind: named?.kind ?? 'sheet' };
  return least(sides.width, sides.length).gt(0) ? sides : ledger.refuse('sheet', say('sheetOfNothing'));
};

/** Reads the name of a sheet, or a size. Undefined means cloth by length. */
export const sheetOf = (ledger: CuttingLedger, kept: Exact): Sheet | undefined => {
  const { sheet: written, oneWay } = ledger.values;
  if (!written) return undefined;
  const { kind, ...sold } = sidesOf(ledger, written);
  const longer = most(sold.width, sold.length);
  ledger.notes.push(...selvagesOf(longer, ledger.style));
  // A one-way print has to lie as somebody wrote it. Otherwise the longer side goes across, for fewer cuts.
  const { width, length } = oneWay ? sold : { width: longer, length: least(sold.width, sold.length) };
  return {
    width: width.mul(kept),
    length: length.mul(kept),
    kind,
    sold: SAY_THEIR_SIZE.includes(kind) ? undefined : sold,
  };
};
