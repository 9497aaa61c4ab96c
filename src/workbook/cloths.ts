import type { Planner } from '../ledger/planning.js';
import { least } from '../measure/exact.js';
import type { WorkbookPart } from './input.js';
import { leftToBuy, type LeftToBuy } from './own-length.js';
import type { Stock } from './own-cloth.js';
import { sheetsLeftToBuy, type SheetsToBuy } from './own-sheets.js';
import { byWidth, type Group } from './parts.js';
import { planPool, poolsOf, type PlannedPool, type Pool } from './pool.js';
import type { WorksheetLedger } from './shape.js';
import { planTogether, type Length, type Together } from './together.js';

/** Parts that are cut from cloth of one width, and how. */
export interface LineCloth extends Group {
  joint: Together;
  /** What is left to buy, if own cloth is cut first. */
  own: LeftToBuy | undefined;
}

/** The lengths to buy. */
export const lengthsToBuy = ({ own, joint }: LineCloth): Length[] => (own ?? joint).lengths;

/** Parts that are cut from the same sheets, and how. */
export interface SheetCloth extends Group {
  pool: Pool;
  joint: PlannedPool;
  own: SheetsToBuy | undefined;
}

/** How the sheets are cut. */
export const sheetsToCut = ({ own, joint }: SheetCloth): PlannedPool => own?.planned ?? joint;

/** How all parts of a fabric are cut. Nothing is written about it yet. */
export interface FabricCloth {
  group: Group;
  lines: LineCloth[];
  pools: SheetCloth[];
}

const isCloth = ({ sheets }: WorkbookPart): boolean => !sheets;

const linesIn = (
  ledger: WorksheetLedger,
  { key, letter, parts }: Group,
  stock: Stock | undefined,
  plan: Planner,
): LineCloth[] => {
  const widths = parts.map(({ sold }) => sold).filter((sold) => sold.gt(0));
  if (widths[0]) stock?.asWideAs(least(...widths));
  return byWidth(parts).map((parts, at) => {
    const joint = planTogether(ledger, parts, plan);
    const own = stock?.written ? leftToBuy(ledger, parts, joint.lengths, stock, plan) : undefined;
    return { key: at ? `${key} ${at + 1}` : key, letter, parts, joint, own };
  });
};

const poolsIn = ({ key, letter, parts }: Group, stock: Stock | undefined, plan: Planner): SheetCloth[] =>
  poolsOf(parts).map((pool, at) => {
    const joint = planPool(pool, plan);
    const own = stock?.written ? sheetsLeftToBuy(pool, joint, stock, plan) : undefined;
    return { key: `${key} sheets${at || ''}`, letter, parts: pool.parts, pool, joint, own };
  });

/** Plans all parts of a fabric. What is at hand of it is used first. */
export const clothOf = (
  ledger: WorksheetLedger,
  group: Group,
  stock: Stock | undefined,
  plan: Planner,
): FabricCloth => {
  const parts = group.parts.filter(isCloth);
  return {
    group,
    lines: parts.length ? linesIn(ledger, { ...group, parts }, stock, plan) : [],
    pools: poolsIn(group, stock, plan),
  };
};
