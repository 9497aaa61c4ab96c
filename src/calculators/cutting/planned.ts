import { isBlank, textOf } from '../../ledger/field.js';
import { sayOfPlan } from '../../ledger/planning.js';
import { allOf, Cut, enoughFor, Purchase } from '../../ledger/purchase.js';
import { count, inches, total, type Quantity } from '../../ledger/quantity.js';
import { refuse } from '../../ledger/refusal.js';
import { buyCloth, costOf, countedIn, cutFor, sayOfShop, spareOf, type Bought } from '../../ledger/shop.js';
import { laidOut, stacked, type CutStrip } from '../../ledger/strips.js';
import { ownCloth, type OwnCloth } from '../../ledger/widths.js';
import { exact, sum, toMark, ZERO, type Exact } from '../../measure/exact.js';
import { isMessage, type Message } from '../../measure/message.js';
import { toPriced } from '../../measure/shop.js';
import { canBeCut } from '../../planner/check.js';
import type { Cloth as PlanCloth, CutPiece, CuttingPlan } from '../../planner/plan.js';
import { PATCHES } from '../../trade/patches.js';
import type { ListedPiece } from './cut-list.js';
import { say, type FabricPlan, type Job, type PlanLedger, type Sheet } from './plan-shape.js';

/** The letters of a list's fabrics, in its order. */
export const lettersOf = (listed: ListedPiece[]): string[] => [
  ...new Set(listed.map(({ fabric }) => fabric)),
];

/** Plans the pieces of each fabric. */
export const planFabrics = (job: Job, listed: ListedPiece[]): FabricPlan[] =>
  lettersOf(listed).map((letter) =>
    planFabric(
      job,
      letter,
      listed.filter(({ fabric }) => fabric === letter),
    ),
  );

/** A number of sheets to buy. */
export const sheetsToBuy = ({ kind, sold, length }: Sheet, count: number): Purchase =>
  new Purchase(length.mul(count), exact(count), 'sheet', say('sheets', { count, kind, size: sold }));

/** The width of a fabric after the wash, and as sold. */
export const widthOf = ({ ledger, input, sheet, cloth }: Job, fabric: string): OwnCloth => {
  const { widths, usualWidth } = input;
  const written =
    widths && Object.hasOwn(widths, fabric) && !isBlank(widths[fabric]) ? widths[fabric] : usualWidth;
  const own = sheet || !fabric ? undefined : written;
  return ownCloth(ledger, { width: cloth.width.value, kept: cloth.kept }, own, (says) =>
    say('widthOfFabric', { fabric, says }),
  );
};

/** The cloth of one fabric, to plan on, and its usable width as sold. */
const clothFor = (job: Job, fabric: string): { on: PlanCloth; sold: Exact } => {
  const { ledger, sheet, cloth } = job;
  const { increment } = ledger.values;
  const { width, sold } = widthOf(job, fabric);
  const [step] = increment.sizes;
  // If the shopping list adds this cloth to that of other parts, a saving of less than a step counts too.
  const inSteps = increment.sizes.length === 1 && !ledger.input.shared;
  return { on: { width, height: sheet?.length, step: inSteps ? step?.mul(cloth.kept) : undefined }, sold };
};

const piecesOf = ({ turn }: Job, listed: ListedPiece[]): CutPiece[] =>
  listed.map(({ width, length, count }) => ({ width, height: length, count, turn }));

/** How much cloth these pieces of a fabric would take. Undefined if they cannot be cut from it, or if it is not known yet. */
export const needOf = (job: Job, fabric: string, listed: ListedPiece[]): Exact | undefined => {
  const { on } = clothFor(job, fabric);
  const pieces = piecesOf(job, listed);
  const planned = job.plan(pieces, on);
  return typeof planned !== 'number' && planned.ok && canBeCut(pieces, on, planned)
    ? planned.length.div(job.cloth.kept)
    : undefined;
};

/** Plans one fabric's pieces. */
const planFabric = (job: Job, fabric: string, listed: ListedPiece[]): FabricPlan => {
  const { ledger, sheet, cloth } = job;
  const { increment, price } = ledger.values;
  const { on, sold } = clothFor(job, fabric);
  const planned = planFor(job, listed, on);
  const laid = laidOut(
    planned,
    on,
    listed.map(({ cutAs }) => cutAs),
    listed.map(({ kind }) => PATCHES[kind].each),
  );
  const buy = buyFor(job, fabric, planned, laid);
  const amount = sheet ? exact(planned.count) : toPriced(buy.inches, increment);
  const cost = price && ledger.paid(amount.mul(price));
  return {
    ...laid,
    fabric,
    need: sheet ? ZERO : planned.length.div(cloth.kept),
    sheets: sheet && planned.count,
    buy,
    cost: cost?.amount,
    sold: sheet ? undefined : sold,
    pieces: listed.map((piece) => cutOf(piece, fabric)),
    used: { cost, cuts: listed.map((piece) => cutOf(piece)) },
  };
};

/** How to cut these pieces. Refuses if that is not possible, or not known yet. */
const planFor = (job: Job, listed: ListedPiece[], on: PlanCloth): CuttingPlan => {
  const pieces = piecesOf(job, listed);
  const planned = job.plan(pieces, on);
  if (typeof planned === 'number') return refuse(sayOfPlan('planning', { done: planned }), job.source);
  if (!planned.ok) {
    const { problem: says } = planned;
    const piece = listed[planned.piece ?? -1];
    return refuse(piece ? say('ofPiece', { piece: piece.piece, size: piece, says }) : says, job.source);
  }
  return canBeCut(pieces, on, planned) ? planned : refuse(sayOfPlan('unsound'), job.source);
};

/** What to buy for a fabric's plan, with its rows. */
const buyFor = (
  { ledger, sheet, cloth, isOne, source, from }: Job,
  fabric: string,
  { count: sheets, exact: isLeast }: CuttingPlan,
  { strips, width }: { strips: CutStrip[]; width: PlanCloth['width'] },
): Purchase => {
  const label = say('fabricName', { fabric });
  const stack = stacked(strips);
  if (sheet) {
    const room = count(sheets).times(inches(sheet.length));
    return ledger.row(`fabric-${fabric}`, sheetsToBuy(sheet, sheets), {
      label,
      how: say('stripsOnSheets', { width, strips: stack, room, isLeast }),
      from: [source, 'sheet', ...from],
    });
  }
  const need = cloth.toBuy(stack);
  const across = width.equals(cloth.width.value) ? cloth.width : inches(width);
  const about = {
    how: say('stripsAcross', { width: across, need, isLeast }),
    from: [source, 'fabricWidth', ...from],
  };
  if (isOne) return buyCloth(ledger, need, about).buy;
  ledger.row(`fabric-${fabric}`, need, { label, ...about });
  const { increment } = ledger.values;
  const buy = enoughFor(need.value, increment);
  if (!ledger.input.shared)
    for (const says of spareOf(need.value, buy.inches, increment))
      ledger.note(sayOfShop('about', { what: label, says }));
  return buy;
};

/** A line of the cut list. It names its fabric if one is given. */
const cutOf = ({ piece, kind, count, width, length }: ListedPiece, fabric = ''): Cut => {
  const called = kind === 'rectangle' ? piece : say('cutUp', { piece, kind });
  return new Cut(count, fabric ? say('ofFabric', { fabric, piece: called }) : called, width, length);
};

/** What all fabrics take together. If there is only one fabric, its cloth has all rows already. */
export const boughtFor = (
  { ledger, sheet, isOne, source }: Job,
  fabrics: FabricPlan[],
): Bought & { sheets?: number | undefined } => {
  const { increment } = ledger.values;
  const { price } = ledger.inputs;
  const all = fabrics.reduce((all, { sheets = 0 }) => all + sheets, 0);
  const buy = sheet
    ? sheetsToBuy(sheet, all)
    : allOf(
        fabrics.map(({ buy }) => buy),
        increment,
      );
  if (price && (sheet || !isOne))
    costOf(
      ledger,
      sheet ? allSheets(fabrics) : countedIn(cutForAll(ledger, fabrics), increment),
      buy,
      price,
      [source, 'price'],
    );
  const need = sum(fabrics.map(({ need }) => need));
  return { buy, fabric: need, spare: sheet ? ZERO : buy.inches.sub(need), sheets: sheet && all };
};

/** The sheets in the rows of all fabrics. */
const allSheets = (fabrics: FabricPlan[]): Quantity =>
  total(fabrics.map(({ fabric, sheets = 0 }) => count(sheets).inRow(`fabric-${fabric}`)));

/** The lengths that the shop cuts for the rows of all fabrics. */
const cutForAll = (ledger: PlanLedger, fabrics: FabricPlan[]): Quantity =>
  total(fabrics.map(({ fabric, need }) => cutFor(ledger, inches(need).inRow(`fabric-${fabric}`))));

export const summaryOf = ({ sheet, isOne }: Job, fabrics: FabricPlan[]): Message => {
  const [first] = fabrics;
  if (sheet || !isOne || !first)
    return say('boughtEach', { fabrics, size: sheet && !sheet.sold ? sheet : undefined });
  const { need, width, pieces } = first;
  return say('piecesFrom', { count: pieces.reduce((all, { count }) => all + count, 0), need, width });
};

/** The most examples that a person reads. */
const MOST_NAMED = 6;

/** Says which sizes are between two marks of the ruler, and how they are cut. */
export const noteMarks = (ledger: PlanLedger, listed: ListedPiece[], mark: Exact): void => {
  const between = new Map(
    listed.flatMap(({ between }) => between).map((side) => [side.toFraction(), side] as const),
  );
  const sizes = [...between.values()].slice(0, MOST_NAMED);
  if (sizes.length)
    ledger.note(
      say('betweenMarks', {
        sizes: sizes.map((written) => ({ written, cut: toMark(written, mark) })),
        areMore: between.size > MOST_NAMED,
      }),
    );
};

/** What the page has to say about this list. */
export const cautionsOf = (caution: unknown): Message[] => {
  if (Array.isArray(caution)) return caution.flatMap(cautionsOf);
  if (isMessage(caution)) return [caution];
  const text = textOf(caution);
  return text ? [say('caution', { text })] : [];
};
