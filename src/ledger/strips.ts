import type { Exact } from '../measure/exact.js';
import { sayings, type Message } from '../measure/message.js';
import { everyPiece, type Cloth, type CuttingPlan, type Strip } from '../planner/plan.js';
import type { Purchase } from './purchase.js';
import { shortFirst, type Size } from './quilt.js';
import { count, inches, total, type Quantity } from './quantity.js';

/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
  x: Exact;
  y: Exact;
  width: Exact;
  height: Exact;
  /** The name of the piece in the cut list. Pieces with the same name share one message object, so that they can be compared by it. */
  piece: Message;
  /** The sheet it lies on, from 0. */
  sheet: number;
  /** For a square that becomes triangles: how many, 2 or 4. */
  triangles?: number | undefined;
}

/** Equal strips across the cloth, and what each gives. */
export interface CutStrip {
  count: number;
  height: Exact;
  /** `size` is that of the piece as it is cut, in exact inches, the short side first. */
  gives: { piece: Message; count: number; size?: Size | undefined }[];
  /** Some of its pieces lie below others, so that only the drawing says how to cut it. */
  asDrawn?: boolean | undefined;
}

/** One fabric's plan, as it is drawn. */
export interface LaidPlan {
  strips: CutStrip[];
  layout: LaidPiece[];
  /** The cloth or sheet, usable: across, and along what is used. */
  width: Exact;
  height: Exact;
}

/** What a drawing of a plan can say. */
export interface LaidSayings {
  laidPicture: { caption: Message; pieces: Message[] };
  laidOn: { fabric: string; buy: Purchase };
  laidOnSome: { fabric: string; alike: number; of: Message };
  /** The same for sheets with these numbers. */
  laidOnNumbers: { fabric: string; numbers: number[]; of: Message };
  laidSides: { short: Exact; long: Exact | undefined };
}

export const sayOfLayout = sayings<LaidSayings>();

/** The most pieces that a drawing shows one by one. */
const MOST_DRAWN = 1500;

/** The size of a piece of this strip. */
const sizeIn = ({ placed }: Strip, of: number): Size | undefined => {
  const spot = placed.find(({ piece }) => piece === of);
  return spot && shortFirst({ width: spot.width, length: spot.height });
};

/** The strips of a plan, from the top of the cloth. `names` are the names of its pieces. */
export const stripsOf = ({ sheets }: CuttingPlan, names: Message[]): CutStrip[] =>
  sheets.flatMap(({ times, strips }) =>
    strips.map((strip) => ({
      count: strip.times * times,
      height: strip.height,
      gives: strip.cuts.flatMap(({ piece, count }) => {
        const name = names[piece];
        return name ? { piece: name, count, size: sizeIn(strip, piece) } : [];
      }),
      asDrawn: strip.placed.some(({ y }) => y.gt(strip.y)),
    })),
  );

/** The height of all strips together, as a formula with equal heights added up: `8 × 2 1/2 + 1 × 12 1/2`. */
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
