import { isSameSheet, sheetsToBuy } from '../calculators/cutting/sheets.js';
import { Ledger, type Input, type Reckoning } from '../ledger/ledger.js';
import type { Planner } from '../ledger/planning.js';
import { ofCloth } from '../ledger/purchase.js';
import { sum, ZERO } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { planCloth } from '../planner/plan.js';
import type { WorkbookInput } from './input.js';
import { settle } from './from-leftovers.js';
import { linesOf, type CountedLine } from './lines.js';
import { sheetLinesOf } from './sheet-lines.js';
import { blocksFromOwn } from './makes.js';
import { groupsOf, readFabrics, type Declared } from './parts.js';
import { adoptCurrency } from './prices.js';
import { say } from './sayings.js';
import { worksheetFields, type FromLeftover, type WorksheetAnswer, type WorksheetLedger } from './shape.js';
import { countItems, totals, type CountedItem } from './sums.js';

/** What is bought by the piece. Equal sheets of several fabrics are counted together. */
const thingsOf = (items: CountedItem[]): Message[] => {
  const alike: CountedItem[][] = [];
  for (const counted of items) {
    const { sheet } = counted.item.used;
    const others = alike.find(([first]) => {
      const other = first?.item.used.sheet;
      return sheet && other && isSameSheet(sheet, other);
    });
    if (others) others.push(counted);
    else alike.push([counted]);
  }
  return alike.flatMap((several) => {
    const sheet = several[0]?.item.used.sheet;
    if (!sheet || several.length < 2) return several.map(({ called }) => called);
    const counts = several.map(({ item }) => item.used.buy?.amount ?? ZERO);
    return say('toBuy', { buy: sheetsToBuy(sheet, sum(counts).valueOf()), width: undefined });
  });
};

/** What is on the list, in a sentence. */
const summaryOf = (
  { values }: WorksheetLedger,
  lines: CountedLine[],
  items: CountedItem[],
  isUnfinished: boolean,
): Message =>
  say('summary', {
    fabrics: new Set(lines.map(({ line }, at) => line.letter || at)).size,
    byLength: items.some(({ item }) => item.fabric),
    inBolts: !!values.kits,
    items: thingsOf(items),
    isUnfinished,
  });

/** The lines of all fabrics, in the order in which they are declared; says which of them nothing is cut from. */
const allLines = (
  ledger: WorksheetLedger,
  declared: Declared[],
  { parts, items, unfinished, named }: WorkbookInput,
  plan: Planner,
): { lines: CountedLine[]; onSheets: CountedItem[]; fromLeftovers: FromLeftover[] } => {
  const lines: CountedLine[] = [];
  const onSheets: CountedItem[] = [];
  const groups = groupsOf(declared, parts);
  const { cloths, fromLeftovers, leftOf } = settle(ledger, declared, groups, plan);
  for (const [at, { letter, parts }] of groups.entries()) {
    const cloth = cloths[at];
    if (cloth?.lines.length) lines.push(...linesOf(ledger, declared, cloth, leftOf));
    if (cloth) onSheets.push(...sheetLinesOf(ledger, declared, cloth, leftOf));
    if (!parts.length && !unfinished.length && !items.some(({ fabric }) => fabric === letter))
      ledger.note(say('unusedFabric', { letter, isNamed: named.includes(letter) }));
  }
  return { lines, onSheets, fromLeftovers };
};

/**
 * One shopping list for all parts of a quilt. The parts of a fabric are added up before rounding, and planned together if that
 * saves cloth. The list has prices, and bolts if a shop cuts kits. A part whose fabric is not declared still gets a line.
 */
export const reckonOn = (ledger: WorksheetLedger, input: WorkbookInput, plan: Planner): WorksheetAnswer => {
  adoptCurrency(ledger, input);
  const declared = readFabrics(ledger, input.fabrics);
  const isUnfinished = input.unfinished.length > 0;
  ledger.notes.push(...input.troubles, ...input.unfinished);
  ledger.given('kits', 'bolt', 'width', 'length', 'fabricWidth', 'seam');
  ledger.given();
  const { lines, onSheets, fromLeftovers } = allLines(ledger, declared, input, plan);
  const items = [...onSheets, ...countItems(ledger, input.items, declared)];
  const makes = blocksFromOwn(input.makers, declared, plan);
  const sums = totals(ledger, lines, items, isUnfinished);
  const need = sum(lines.map(({ line }) => line.need));
  const inches = sum(lines.map(({ line }) => line.buy.inches));
  return {
    buy: ofCloth(inches, ledger.values.increment),
    fabric: need,
    spare: sum(lines.map(({ line }) => line.spare)),
    summary: summaryOf(ledger, lines, items, isUnfinished),
    cuts: [],
    fabrics: lines.map(({ line }) => line),
    items: items.map(({ item }) => item),
    makes: makes.length ? makes : undefined,
    fromLeftovers: fromLeftovers.length ? fromLeftovers : undefined,
    ...sums,
    used: {},
  };
};

/** The shopping list of what was gathered from calculators. */
export const reckon = (
  fields: Input<typeof worksheetFields> | null,
  input: WorkbookInput,
  plan: Planner = planCloth,
): Reckoning<WorksheetAnswer> => {
  const ledger: WorksheetLedger = new Ledger(worksheetFields, fields);
  return ledger.finish(() => reckonOn(ledger, input, plan));
};
