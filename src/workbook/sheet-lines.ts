import { isSoldAs, readSheet, sheetsToBuy } from '../calculators/cutting/sheets.js';
import { unlessRefused } from '../ledger/refusal.js';
import { exact, ONE, ZERO, type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { noteBoltsForQuarters } from './bolts.js';
import { textOfLine } from './lines.js';
import { sheetsToCut, type FabricCloth, type SheetCloth } from './cloths.js';
import { leftoversOf, type Left } from './leftovers.js';
import type { Declared } from './parts.js';
import { titlesOf } from './parts.js';
import type { PlannedPool, Pool } from './pool.js';
import { priceOf } from './prices.js';
import { say } from './sayings.js';
import type { PlannedTogether, WorksheetLedger } from './shape.js';
import type { CountedItem } from './sums.js';

/** The price of one sheet: that of the fabric if it is bought in these sheets, or the first that a part has. */
const priceOfSheet = (
  ledger: WorksheetLedger,
  { sheet, oneWay, parts }: Pool,
  fabric: Declared | undefined,
): Exact | undefined => {
  const isOfFabric =
    !!fabric?.sheet &&
    unlessRefused(
      () => isSoldAs(readSheet(fabric.sheet, ledger.style, { oneWay, kept: ONE }), sheet),
      () => false,
    );
  const own = isOfFabric
    ? priceOf(ledger, { written: fabric.price }, say('priceOfFabric', { letter: fabric.letter }))
    : undefined;
  return (
    own ??
    parts.map(({ price, title }) => priceOf(ledger, price, say('priceOfPart', { title }))).find(Boolean)
  );
};

/** The row of several parts: how many sheets each takes, and all together. */
const rowOf = (
  ledger: WorksheetLedger,
  key: string,
  label: Message,
  pool: Pool,
  planned: PlannedPool,
): void => {
  const { alone, count } = planned;
  const parts = pool.parts.map(({ when }, at) => ({ title: when, sheets: alone[at] ?? 0 }));
  const how = say('sheetsOfParts', {
    parts,
    alone: alone.reduce((all, sheets) => all + sheets, 0),
    together: count,
  });
  ledger.row(`buy-${key}`, sheetsToBuy(pool.sheet, count), { label, how });
};

/** The joint plan, as it is drawn. */
const togetherOf = (
  letter: string,
  { sheet }: Pool,
  { laid, count, weeks }: PlannedPool,
): PlannedTogether | undefined =>
  laid && {
    fabric: letter,
    need: ZERO,
    buy: sheetsToBuy(sheet, count),
    pieces: [],
    sheets: count,
    ...laid,
    used: { sheet, isNumbered: !!weeks },
  };

/** The line of one pool. */
const lineOf = (
  ledger: WorksheetLedger,
  cloth: SheetCloth,
  fabric: Declared | undefined,
  leftOf: (cloth: SheetCloth) => Left[],
): CountedItem => {
  const { key, letter, pool, joint, own } = cloth;
  const { parts, sheet } = pool;
  const [first] = parts;
  const what = letter || !first ? say('fabricOf', { letter }) : first.title;
  const called = say('clothOf', { what, width: undefined });
  if (joint.isPlanning) ledger.note(say('planningTogether', { cloth: called }));
  const { stock } = fabric ?? {};
  const planned = sheetsToCut(cloth);
  const name = fabric?.name ?? '';
  const label = name ? say('clothNamed', { cloth: called, name }) : called;
  if (parts.length > 1) rowOf(ledger, key, label, pool, joint);
  const { kits } = ledger.values;
  if (kits && sheet.kind === 'fat-quarter')
    noteBoltsForQuarters(ledger, { kits, ofKit: planned.count }, key, label);
  const missing = own?.buy ?? planned.count;
  const buy = sheetsToBuy(sheet, missing);
  const price = priceOfSheet(ledger, pool, fabric);
  const paid = price && ledger.paid(exact(missing).mul(price));
  const hasOwn = missing < joint.count;
  const text = textOfLine(say('toBuy', { buy, width: undefined }), hasOwn, buy);
  const titles = titlesOf(parts);
  const leaves = leftoversOf(() => leftOf(cloth), ledger.style);
  return {
    item: {
      title: titles.length === 1 && first ? first.title : say('uses', { titles }),
      fabric: letter,
      name,
      text,
      price: price && ledger.priced(price),
      cost: paid,
      sheets: planned.count,
      parts: parts.map(({ title }, at) => ({ title, sheets: planned.alone[at] ?? 0 })),
      weeks: planned.weeks,
      own: stock && { written: stock.written, isEnough: !missing, plans: own?.own ?? [] },
      together: togetherOf(letter, pool, planned),
      get leftovers() {
        return leaves.named();
      },
      used: { buy, sheet, left: leaves.left },
    },
    called: letter ? say('itemOf', { item: text, letter }) : text,
    paid,
  };
};

/** The lines of a fabric that is bought in sheets: one for all parts that are cut from the same ones. */
export const sheetLinesOf = (
  ledger: WorksheetLedger,
  declared: Declared[],
  { group, pools }: FabricCloth,
  leftOf: (cloth: SheetCloth) => Left[],
): CountedItem[] => {
  const fabric = declared.find(({ letter }) => letter === group.letter);
  return pools.map((cloth) => lineOf(ledger, cloth, fabric, leftOf));
};
