import { clothOf } from '../../ledger/cloth.js';
import { textOf } from '../../ledger/field.js';
import { Ledger, type Reckoning } from '../../ledger/ledger.js';
import type { Planner } from '../../ledger/planning.js';
import { Purchase } from '../../ledger/purchase.js';
import { count, inches, type Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { least, ONE, sum, ZERO, type Exact } from '../../measure/exact.js';
import type { Message } from '../../measure/message.js';
import { planCloth } from '../../planner/plan.js';
import type { ListedPiece } from '../cutting/cut-list.js';
import type { FabricPlan, Job } from '../cutting/plan-shape.js';
import { clothOfSheet, sheetsOf } from '../cutting/sheets.js';
import {
  boughtFor,
  cautionsOf,
  jobFor,
  lettersOf,
  needOf,
  noteMarks,
  planFabrics,
  summaryOf,
  widthOf,
} from '../cutting/planned.js';
import { readChart } from './chart.js';
import { partsOf, PIECES, type Chart, type PlacedPatch } from './patch.js';
import { piecesFor, sizeOf, type Method } from './pieces.js';
import { stripsFor } from './strip-sets.js';
import {
  blockFields,
  METHODS,
  say,
  type BlockAnswer,
  type BlockFabric,
  type BlockInput,
  type BlockLedger,
  type FabricNeed,
} from './shape.js';

/**
 * One block of a quilt, as a chart of fabric letters: what to cut for so many of them, and the cloth of each fabric. Every plan is
 * checked before it is given back.
 */
export const reckon = (given: BlockInput | null = {}, plan: Planner = planCloth): Reckoning<BlockAnswer> => {
  const input = given ?? {};
  const ledger: BlockLedger = new Ledger(blockFields, input);
  return ledger.finish(() => {
    const { block, count: blocks, mark, method: code, week, oneWay } = ledger.values;
    const method = METHODS[code];
    const chart = ledger.blame('chart', () => readChart(ledger.values.chart));
    ledger.given('chart', 'block', 'count', 'method', 'sheet', 'seam');
    const sizes = sizesOf(ledger, chart);
    const sheets = sheetsOf(ledger, input);
    const cloth = sheets.own ? clothOfSheet(sheets.own) : clothOf(ledger);
    ledger.given('oneWay', 'mark', 'week', 'shrinkage', 'increment', 'price', 'currency');
    const about = { ledger, source: 'chart', from: FROM, input, plan, sheets, cloth, turn: !oneWay };
    const job = jobFor(about, blocks ? lettersIn(chart) : []);
    const made = listedFor(job, ledger, chart, method);
    if (!made) ledger.note(say('notOfStrips'));
    const listed = blocks ? (made ?? piecesFor(chart, block, blocks, method, ledger.values)) : [];
    const fabrics = planFabrics(job, listed);
    if (blocks) sayOtherWays(job, ledger, chart, fabrics);
    noteMarks(ledger, listed, mark);
    if (hasUnlikeSkies(chart, method)) ledger.note(say('unlikeSkies'));
    ledger.notes.push(...cautionsOf(input.caution));
    const name = textOf(input.name).trim();
    return {
      ...boughtFor(job, fabrics),
      ...sizes,
      count: blocks,
      block,
      columns: chart.columns,
      rows: chart.rows,
      letters: coveredBy(chart, block),
      fabrics,
      week,
      cuts: fabrics.flatMap(({ pieces }) => pieces),
      summary: say('summary', { name, count: blocks, block, says: summaryOf(job, fabrics) }),
      used: {
        ...(sheets.own ? {} : { cloth }),
        chart,
        name,
        oneWay,
        ...making(job, ledger, chart, method),
      },
    };
  });
};

/** The pieces of each fabric for so many blocks, and how much a wash leaves of the cloth. */
const making = (
  job: Job,
  ledger: BlockLedger,
  chart: Chart,
  method: Method,
): Pick<BlockAnswer['used'], 'kept' | 'piecesOf'> => ({
  kept: ONE.sub(ledger.values.shrinkage),
  piecesOf: (count) => {
    const { block } = ledger.values;
    const listed =
      listedFor(job, ledger, chart, method, count) ?? piecesFor(chart, block, count, method, ledger.values);
    return lettersOf(listed).map((fabric) => ({
      fabric,
      pieces: ofFabric(listed, fabric).map(({ width, length, count }) => ({
        width,
        length,
        count,
        turn: job.turn,
      })),
    }));
  },
});

/** The inputs that a plan of a block comes from. */
const FROM = ['block', 'count', 'method'];

/** The sizes of the block and of its cells, with their rows. */
const sizesOf = (ledger: BlockLedger, chart: Chart): Pick<BlockAnswer, 'cell' | 'unfinished' | 'patches'> => {
  const { block, seam } = ledger.inputs;
  const { mark } = ledger.values;
  const from = ['chart'];
  const cell: Size = sizeOf({ across: 1, down: 1 }, chart, block.value);
  for (const patch of chart.patches) refuseTooSmall(ledger, patch, sizeOf(patch, chart, block.value), mark);
  ledger.row('cell', block.over(chart.columns), { from });
  if (chart.columns !== chart.rows) ledger.row('cellLength', block.over(chart.rows), { from });
  const unfinished = ledger.row('unfinished', block.plus(seam.times(2)));
  const patches = chart.patches.reduce((all, { kind }) => all + PIECES[kind], 0);
  ledger.row('patches', count(patches).times(ledger.inputs.count), { from });
  return { cell, unfinished: unfinished.value, patches };
};

/** Refuses a patch that nobody could cut. */
const refuseTooSmall = (
  ledger: BlockLedger,
  { kind }: PlacedPatch,
  { width, length }: Size,
  mark: Exact,
): void => {
  const side = least(width, length);
  const finest = kind === 'quarter' || kind === 'inside' ? side.div(2) : side;
  if (finest.lt(mark)) ledger.refuse('block', say('patchTooSmall', { patch: { width, length }, mark }));
};

/** What each fabric covers in one block. */
const coveredBy = (chart: Chart, block: Exact): BlockFabric[] => {
  const covered = new Map<string, BlockFabric>();
  for (const patch of chart.patches) {
    const { width, length } = sizeOf(patch, chart, block);
    const parts = partsOf(patch);
    patch.letters.forEach((fabric, at) => {
      const before = covered.get(fabric) ?? { fabric, pieces: 0, area: ZERO };
      covered.set(fabric, {
        fabric,
        pieces: before.pieces + (patch.kind === 'inside' && at ? 4 : 1),
        area: before.area.add(width.mul(length).mul(parts[at] ?? ZERO)),
      });
    });
  }
  return [...covered.values()];
};

const hasUnlikeSkies = ({ patches }: Chart, { geese }: Method): boolean =>
  geese === 'four' &&
  patches.some(({ kind, letters: [before, , after] }) => kind === 'goose' && before !== after);

const lettersIn = ({ patches }: Pick<Chart, 'patches'>): string[] => [
  ...new Set(patches.flatMap(({ letters }) => letters)),
];

/** The pieces to cut by a method. Undefined if the block cannot be made so. */
const listedFor = (
  job: Job,
  { values }: BlockLedger,
  chart: Chart,
  method: Method,
  count = values.count,
): ListedPiece[] | undefined => {
  const { block } = values;
  if (method.rows === 'patches') return piecesFor(chart, block, count, method, values);
  // The strips of a set are as long as its narrowest cloth is wide.
  const width = least(...lettersIn(chart).map((letter) => widthOf(job, letter).width));
  return stripsFor(chart, block, count, values, width);
};

/** Another way to make the same block, and the row that says what it takes. */
interface OtherWay {
  row: 'halvesOtherwise' | 'geeseOtherwise' | 'rowsOtherwise';
  method: Method;
  how: (fabrics: FabricNeed[]) => Message;
}

/** The other ways to make what is in the chart. */
const otherWays = ({ patches }: Chart, method: Method): OtherWay[] => {
  const has = (kind: PlacedPatch['kind']): boolean => patches.some((patch) => patch.kind === kind);
  const halves = method.halves === 'two' ? 'eight' : 'two';
  const geese = method.geese === 'one' ? 'four' : 'one';
  const rows = method.rows === 'patches' ? 'strips' : 'patches';
  const ways: OtherWay[] = [];
  if (has('half'))
    ways.push({
      row: 'halvesOtherwise',
      method: { ...method, halves },
      how: (fabrics) => say('halvesOtherWay', { way: halves, fabrics }),
    });
  if (has('goose'))
    ways.push({
      row: 'geeseOtherwise',
      method: { ...method, geese },
      how: (fabrics) => say('geeseOtherWay', { way: geese, fabrics }),
    });
  // From one fabric, nobody sews strips together.
  if (patches.every(({ kind }) => kind === 'plain') && lettersIn({ patches }).length > 1)
    ways.push({
      row: 'rowsOtherwise',
      method: { ...method, rows },
      how: (fabrics) => say('rowsOtherWay', { way: rows, fabrics }),
    });
  return ways;
};

/** Says what the other methods would take, if that differs. */
const sayOtherWays = (job: Job, ledger: BlockLedger, chart: Chart, fabrics: FabricPlan[]): void => {
  const needs = (other: Method): FabricNeed[] | undefined => {
    const listed = listedFor(job, ledger, chart, other);
    if (!listed) return undefined;
    const all = lettersOf(listed).map((fabric) => ({
      fabric,
      need: needOf(job, fabric, ofFabric(listed, fabric)),
    }));
    const known = all.flatMap(({ fabric, need }) => (need ? [{ fabric, need }] : []));
    const isSame = fabrics.every((plan) => known.some((one) => takesSame(one, plan)));
    return known.length < all.length || isSame ? undefined : known;
  };
  for (const { row, method, how } of otherWays(chart, METHODS[ledger.values.method])) {
    const other = needs(method);
    if (other) ledger.row(row, allNeeded(other), { how: how(other), from: ['chart', ...FROM] });
  }
};

const takesSame = ({ fabric, need }: FabricNeed, plan: FabricPlan): boolean =>
  fabric === plan.fabric &&
  (need instanceof Purchase ? need.amount.equals(plan.buy.amount) : need.equals(plan.need));

/** The cloth that a method takes in all. If it takes only sheets, their number. */
const allNeeded = (fabrics: FabricNeed[]): Quantity => {
  const lengths = fabrics.flatMap(({ need }) => (need instanceof Purchase ? [] : [need]));
  const sheets = fabrics.flatMap(({ need }) => (need instanceof Purchase ? [need.amount] : []));
  return lengths.length ? inches(sum(lengths)) : count(sum(sheets).valueOf());
};

const ofFabric = (listed: ListedPiece[], letter: string): ListedPiece[] =>
  listed.filter(({ fabric }) => fabric === letter);
