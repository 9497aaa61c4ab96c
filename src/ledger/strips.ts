import type { Exact } from '../measure/exact.js';
import { sayings, type Message } from '../measure/message.js';
import { everyPiece, type Cloth, type CuttingPlan } from '../planner/plan.js';
import type { Purchase } from './purchase.js';
import { count, inches, total, type Quantity } from './quantity.js';

/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
  x: Exact;
  y: Exact;
  width: Exact;
  height: Exact;
  /** The piece's name in the cut list. Pieces that are called the same have one and the same message. */
  piece: Message;
  /** The sheet it lies on, from 0. */
  sheet: number;
  /** Of a square that triangles are cut from: how many, 2 or 4. */
  triangles?: number | undefined;
}

/** Strips cut alike across the cloth, and what each gives. */
export interface CutStrip {
  count: number;
  height: Exact;
  gives: { piece: Message; count: number }[];
}

/** One fabric's plan, as it is drawn. */
export interface LaidPlan {
  strips: CutStrip[];
  layout: LaidPiece[];
  /** The cloth or sheet, usable: across, and along what is used. */
  width: Exact;
  height: Exact;
}

/** What a drawing of a plan says. */
export interface LaidSayings {
  laidPicture: { caption: Message; pieces: Message[] };
  laidOn: { fabric: string; buy: Purchase };
  laidOnSome: { fabric: string; alike: number; of: Message };
  laidSides: { short: Exact; long: Exact | undefined };
}

export const sayOfLayout = sayings<LaidSayings>();

/** Pieces that a drawing shows one by one. */
const MOST_DRAWN = 1500;

/** A plan's strips from the top of the cloth; `names` has those of the pieces. */
export const stripsOf = ({ sheets }: CuttingPlan, names: Message[]): CutStrip[] =>
  sheets.flatMap(({ times, strips }) =>
    strips.map((strip) => ({
      count: strip.times * times,
      height: strip.height,
      gives: strip.cuts.flatMap(({ piece, count }) => {
        const name = names[piece];
        return name ? { piece: name, count } : [];
      }),
    })),
  );

/** What strips come to, one below the other, those of one height together: `8 × 2 1/2 + 1 × 12 1/2`. */
export const stacked = (strips: CutStrip[]): Quantity => {
  const heights = new Map<string, { height: Exact; times: number }>();
  for (const { count, height } of strips) {
    const key = height.toFraction();
    heights.set(key, { height, times: (heights.get(key)?.times ?? 0) + count });
  }
  return total([...heights.values()].map(({ height, times }) => count(times).times(inches(height))));
};

/** A plan's strips, and where each piece lies. */
export const laidOut = (
  plan: CuttingPlan,
  { width, height = plan.length }: Cloth,
  names: Message[],
  triangles: number[] = [],
): LaidPlan => ({
  strips: stripsOf(plan, names),
  layout: everyPiece(plan, MOST_DRAWN).flatMap(({ piece, sheet, x, y, width, height }) => {
    const name = names[piece];
    const each = triangles[piece] ?? 1;
    return name ? { x, y, width, height, piece: name, sheet, triangles: each > 1 ? each : undefined } : [];
  }),
  width,
  height,
});
