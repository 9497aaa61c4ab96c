import { most, type Exact } from '../measure/exact.js';
import type { Cloth, CuttingPlan, Strip } from './plan.js';

/** A rectangle on a piece of cloth, in inches from its left and its top. */
export interface Rectangle {
  x: Exact;
  y: Exact;
  width: Exact;
  height: Exact;
}

/** A rectangle that a plan leaves, and the sheet it lies on, from 0. Cloth bought by length is one sheet. */
export interface Free extends Rectangle {
  sheet: number;
}

/** A direction: across the cloth, or along it. */
interface Way {
  from: 'x' | 'y';
  size: 'width' | 'height';
}

const ACROSS: Way = { from: 'x', size: 'width' };
const ALONG: Way = { from: 'y', size: 'height' };

const endOf = (box: Rectangle, { from, size }: Way): Exact => box[from].add(box[size]);
const reachOf = (boxes: Rectangle[], way: Way): Exact => most(...boxes.map((box) => endOf(box, way)));

/** Cuts a rectangle in two at this place, from edge to edge. */
const cutAt = (whole: Rectangle, at: Exact, { from, size }: Way): [Rectangle, Rectangle] => [
  { ...whole, [size]: at.sub(whole[from]) },
  { ...whole, [from]: at, [size]: whole[from].add(whole[size]).sub(at) },
];

/** Groups of boxes with a cut from edge to edge between them, and where each group begins. */
const groupsOf = (boxes: Rectangle[], way: Way): { boxes: Rectangle[]; start: Exact; end: Exact }[] => {
  const groups: { boxes: Rectangle[]; start: Exact; end: Exact }[] = [];
  for (const box of [...boxes].sort((a, b) => a[way.from].compare(b[way.from]))) {
    const last = groups.at(-1);
    const end = endOf(box, way);
    if (!last || box[way.from].gte(last.end)) groups.push({ boxes: [box], start: box[way.from], end });
    else {
      last.boxes.push(box);
      last.end = most(last.end, end);
    }
  }
  return groups;
};

export const areaOf = ({ width, height }: Pick<Rectangle, 'width' | 'height'>): Exact => width.mul(height);
const largest = (boxes: Rectangle[]): Exact => most(...boxes.map(areaOf));

/** What lies beyond the boxes, at the end of a cloth or below them; cut off in the order that leaves the larger piece. */
const trimmed = (boxes: Rectangle[], cloth: Rectangle): { rest: Rectangle; off: Rectangle[] } => {
  const ways = [
    [ACROSS, ALONG],
    [ALONG, ACROSS],
  ].map((order) => {
    let rest = cloth;
    const off: Rectangle[] = [];
    for (const way of order) {
      const reach = reachOf(boxes, way);
      if (reach.gte(endOf(rest, way))) continue;
      const [kept, cut] = cutAt(rest, reach, way);
      rest = kept;
      off.push(cut);
    }
    return { rest, off };
  });
  const [first = { rest: cloth, off: [] }, second = first] = ways;
  return first.off.length > 1 && largest(second.off).gt(largest(first.off)) ? second : first;
};

/** Divides a cloth that its boxes fill to both ends. Neighbours that leave as much below them stay together. */
const divided = (
  boxes: Rectangle[],
  cloth: Rectangle,
  way: Way,
  other: Way,
): { boxes: Rectangle[]; cloth: Rectangle }[] => {
  const groups: { boxes: Rectangle[]; start: Exact; reach: Exact }[] = [];
  for (const { boxes: some, start } of groupsOf(boxes, way)) {
    const reach = reachOf(some, other);
    const last = groups.at(-1);
    if (last?.reach.equals(reach) && reach.lt(endOf(cloth, other))) last.boxes.push(...some);
    else groups.push({ boxes: some, start, reach });
  }
  let rest = cloth;
  return groups.map(({ boxes }, at) => {
    const next = groups[at + 1];
    if (!next) return { boxes, cloth: rest };
    const [own, others] = cutAt(rest, next.start, way);
    rest = others;
    return { boxes, cloth: own };
  });
};

/**
 * What is left of a cloth after these boxes are cut from it, with edge-to-edge cuts only: rectangles that do not overlap. Where no
 * such cut parts the boxes, nothing is promised.
 */
export const around = (boxes: Rectangle[], { x, y, width, height }: Rectangle): Rectangle[] => {
  const cloth = { x, y, width, height };
  if (!boxes.length) return [cloth];
  const { rest, off } = trimmed(boxes, cloth);
  const parts = [[ACROSS, ALONG] as const, [ALONG, ACROSS] as const].map(([way, other]) =>
    divided(boxes, rest, way, other),
  );
  const apart = parts.find(({ length }) => length > 1);
  return [...off, ...(apart ?? []).flatMap(({ boxes, cloth }) => around(boxes, cloth))];
};

/** The rectangles that equal strips leave, from the first one to the last. */
const ofStrip = ({ y, height, times, placed }: Strip, width: Exact): Rectangle[] => {
  const first = around(placed, { x: y.mul(0), y, width, height });
  return Array.from({ length: times }, (_, at) =>
    first.map((one) => ({ ...one, y: one.y.add(height.mul(at)) })),
  ).flat();
};

/**
 * What is left when somebody cuts by this plan: the ends of its strips, what is over in a strip, and the rest of each sheet. The
 * strips are cut first, so what they leave is not joined across them.
 */
export const freeOf = (plan: CuttingPlan, cloth: Cloth): Free[] => {
  const free = known.get(plan) ?? freeIn(plan, cloth);
  known.set(plan, free);
  return free;
};

/** What plans leave. A plan is made for one cloth, so it always leaves the same. */
const known = new WeakMap<CuttingPlan, Free[]>();

const freeIn = ({ sheets }: CuttingPlan, { width, height }: Cloth): Free[] => {
  let sheet = 0;
  return sheets.flatMap(({ times, strips, used }) => {
    const free = strips.flatMap((strip) => ofStrip(strip, width));
    if (height?.gt(used)) free.push({ x: used.mul(0), y: used, width, height: height.sub(used) });
    return Array.from({ length: times }, () => {
      const on = sheet++;
      return free.map((one) => ({ ...one, sheet: on }));
    }).flat();
  });
};
