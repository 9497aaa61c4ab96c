import type { Exact } from '../../src/measure/exact.js';

/** A rectangle in plain inches. */
export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Less than anybody can cut; plain numbers are not exact. */
const TINY = 1e-7;

type Sides = Pick<Record<keyof Box, Exact>, 'width' | 'height'>;

export const sizeOf = ({ width, height }: Sides): Pick<Box, 'width' | 'height'> => ({
  width: width.valueOf(),
  height: height.valueOf(),
});

export const boxOf = ({ x, y, ...size }: Record<keyof Box, Exact>): Box => ({
  x: x.valueOf(),
  y: y.valueOf(),
  ...sizeOf(size),
});

const isWithin = (box: Box, cloth: Box): boolean =>
  box.x >= cloth.x - TINY &&
  box.y >= cloth.y - TINY &&
  box.x + box.width <= cloth.x + cloth.width + TINY &&
  box.y + box.height <= cloth.y + cloth.height + TINY;

const isApart = (a: Box, b: Box): boolean =>
  a.x >= b.x + b.width - TINY ||
  b.x >= a.x + a.width - TINY ||
  a.y >= b.y + b.height - TINY ||
  b.y >= a.y + a.height - TINY;

/** Whether edge-to-edge cuts part all boxes: some line that meets none of them divides them, and so on. */
const isCuttable = (boxes: Box[]): boolean => {
  if (boxes.length < 2) return true;
  for (const [from, size] of [
    ['x', 'width'],
    ['y', 'height'],
  ] as const)
    for (const { [from]: line } of boxes) {
      const before = boxes.filter((box) => box[from] + box[size] <= line + TINY);
      const after = boxes.filter((box) => box[from] >= line - TINY);
      if (before.length && after.length && before.length + after.length === boxes.length)
        return isCuttable(before) && isCuttable(after);
    }
  return false;
};

/** What is wrong with boxes on a cloth: one is not on it, two overlap, or edge-to-edge cuts do not part them. */
export const faultIn = (boxes: Box[], cloth: Box): string | undefined => {
  const outside = boxes.find((box) => !isWithin(box, cloth));
  if (outside) return `outside: ${JSON.stringify(outside)} of ${JSON.stringify(cloth)}`;
  for (const [at, box] of boxes.entries()) {
    const other = boxes.slice(at + 1).find((other) => !isApart(box, other));
    if (other) return `overlap: ${JSON.stringify([box, other])}`;
  }
  return isCuttable(boxes) ? undefined : `uncuttable: ${JSON.stringify(boxes)}`;
};

/** Whether one box lies in another. */
export const holds = (cloth: Box, box: Box): boolean => isWithin(box, cloth);
