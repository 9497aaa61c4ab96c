import type { LooseCut } from '../calculators/calculator.js';
import type { Sheet } from '../calculators/cutting/plan-shape.js';
import { isSameSheet, onSheet } from '../calculators/cutting/sheets.js';
import { sayOfPlan, type Planner } from '../ledger/planning.js';
import { refuse } from '../ledger/refusal.js';
import { sayOfShop } from '../ledger/shop.js';
import { laidOut, type LaidPlan } from '../ledger/strips.js';
import { Cut } from '../ledger/purchase.js';
import type { Message } from '../measure/message.js';
import { joined, type Joined } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import type { CutPiece, CuttingPlan } from '../planner/plan.js';
import { shareOut, type SharedOut } from '../planner/share-out.js';
import type { WorkbookPart } from './input.js';
import { isSame } from './flow.js';
import { say } from './sayings.js';
import type { SheetsOfPart } from './shape.js';

/** Parts of one fabric that are cut from the same sheets, in the order of their weeks. */
export interface Pool {
  sheet: Sheet;
  oneWay: boolean;
  parts: WorkbookPart[];
}

/** In the order of the weeks. What has none comes last. */
export const byWeek = (
  { week: a }: { week?: number | undefined },
  { week: b }: { week?: number | undefined },
): number => (a === b ? 0 : (a ?? Infinity) - (b ?? Infinity));

const isOneWay = ({ pieces }: WorkbookPart): boolean => pieces.some(({ turn }) => !turn);

/** The parts that are cut from the same sheets. Those that are cut from cloth by length are left out. */
export const poolsOf = (parts: WorkbookPart[]): Pool[] => {
  const pools: Pool[] = [];
  for (const part of parts) {
    if (!part.sheets) continue;
    const { sheet } = part.sheets;
    const oneWay = isOneWay(part);
    const known = pools.find((pool) => pool.oneWay === oneWay && isSameSheet(pool.sheet, sheet));
    if (known) known.parts.push(part);
    else pools.push({ sheet, oneWay, parts: [part] });
  }
  for (const { parts } of pools) parts.sort(byWeek);
  return pools;
};

/** A piece for the planner, with the name that its part gives it. */
export interface NamedPiece extends CutPiece {
  name: Message;
}

export const namedPieces = ({ title, pieces }: WorkbookPart): NamedPiece[] =>
  pieces.map(({ piece = title, width, length, count, turn }: LooseCut) => ({
    width,
    height: length,
    count,
    turn,
    name: piece,
  }));

/** What each piece of a joint list is called: all names that the parts give it. */
export const namesOf = ({ from }: Joined<NamedPiece>): Message[] =>
  from.map((pieces) => {
    const names: Message[] = [];
    for (const { name } of pieces) if (!names.some((known) => isSame(known, name))) names.push(name);
    const [first] = names;
    return first && names.length === 1 ? first : say('anyPiece', { pieces: names });
  });

/** What the parts of a pool take. */
export interface PlannedPool {
  count: number;
  /** How many sheets each part takes by itself. */
  alone: number[];
  weeks: SheetsOfPart[] | undefined;
  laid: LaidPlan | undefined;
  /** The plan of all parts, and the numbers that its sheets have, if they are shared out. */
  joint?: { plan: CuttingPlan; numbers: Map<number, number> | undefined };
  /** A plan that may save sheets is not ready yet. */
  isPlanning?: boolean;
}

/** How many sheets a part takes by itself. Throws a `Refusal` if its pieces do not fit on one. */
const aloneOf = (part: WorkbookPart, { sheet }: Pool, plan: Planner): number => {
  const known = part.sheets?.count;
  if (known !== undefined) return known;
  const { pieces } = joined([namedPieces(part)]);
  const on = onSheet(sheet);
  const planned = plan(pieces, on);
  if (typeof planned === 'number') return refuse(sayOfPlan('planning', { done: planned }), 'parts');
  if (!planned.ok) return refuse(sayOfShop('about', { what: part.title, says: planned.problem }), 'parts');
  return canBeCut(pieces, on, planned) ? planned.count : refuse(sayOfPlan('unsound'), 'parts');
};

/** What a part cuts, from the sheets with these numbers, counted from 0. */
const ofPart = (
  { when, title, week, pieces }: WorkbookPart,
  from: number[],
  opened: number,
): SheetsOfPart => ({
  part: when,
  week,
  pieces: pieces.map(({ piece = title, width, length, count }) => new Cut(count, piece, width, length)),
  from: from.map((number) => number + 1),
  opened,
});

/** Each part cuts its own sheets. */
const apart = ({ parts }: Pool, alone: number[]): PlannedPool => {
  let first = 0;
  const weeks = parts.map((part, at) => {
    const count = alone[at] ?? 0;
    const from = Array.from({ length: Math.min(count, MOST_NUMBERS) }, (_, number) => first + number);
    first += count;
    return ofPart(part, from, count);
  });
  return { count: first, alone, weeks: first > MOST_NUMBERS ? undefined : weeks, laid: undefined };
};

/** Nobody reads a longer list of numbers. */
const MOST_NUMBERS = 1000;

/** The layout of a plan with its sheets in the order in which they are opened. */
const inOrder = (laid: LaidPlan, numbers: Map<number, number>): LaidPlan => {
  const layout = laid.layout.map((piece) => ({ ...piece, sheet: numbers.get(piece.sheet) ?? piece.sheet }));
  return { ...laid, layout: layout.sort((a, b) => a.sheet - b.sheet) };
};

const weeksOf = ({ parts }: Pool, { shares }: SharedOut): SheetsOfPart[] =>
  parts.flatMap((part, at) => {
    const share = shares[at];
    return share
      ? ofPart(
          part,
          share.cuts.map(({ sheet }) => sheet),
          share.opened,
        )
      : [];
  });

/** A joint plan, shared out to the parts. `all` has the pieces that they want. */
export const sharedPool = (
  pool: Pool,
  alone: number[],
  planned: CuttingPlan,
  all: Joined<NamedPiece>,
): PlannedPool => {
  const shared = shareOut(planned, all.pieces, all.wanted);
  const laid = planned.count ? laidOut(planned, onSheet(pool.sheet), namesOf(all)) : undefined;
  const numbers = shared && new Map(shared.order.map((place, number) => [place, number]));
  return {
    count: planned.count,
    alone,
    weeks: shared && weeksOf(pool, shared),
    laid: laid && numbers ? inOrder(laid, numbers) : laid,
    joint: { plan: planned, numbers },
  };
};

/**
 * The sheets for all parts of a pool: as one list of all their pieces takes, and never more than the parts take one after the other.
 * The plan is then shared out to the parts, so that each of them cuts from sheets that are open already, as far as they have its
 * pieces.
 */
export const planPool = (pool: Pool, plan: Planner): PlannedPool => {
  const { parts } = pool;
  const alone = parts.map((part) => aloneOf(part, pool, plan));
  const separate = apart(pool, alone);
  if (parts.length < 2) return separate;
  const all = joined(parts.map(namedPieces));
  const on = onSheet(pool.sheet);
  const planned = plan(all.pieces, on);
  if (typeof planned === 'number') return { ...separate, isPlanning: true };
  if (!planned.ok || !canBeCut(all.pieces, on, planned) || planned.count > separate.count) return separate;
  return sharedPool(pool, alone, planned, all);
};
