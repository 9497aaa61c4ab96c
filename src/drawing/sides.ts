import type { Style } from '../measure/format.js';
import { rowIn, type Row } from '../reckon/answer.js';
import type { Size } from '../reckon/shared.js';
import { inchesOf, lengthOf, type Dimension } from './picture.js';

/** A size to draw with. */
export const sidesOf = ({ width, length }: Size): { width: number; height: number } => ({
  width: inchesOf(width),
  height: inchesOf(length),
});

/** The size that was given: of the quilt, or of its top. */
export const givenSize = (result: { working: Row[] }): Size => {
  const inches = (id: string): string => rowIn(result, id)!.inches!;
  return { width: inches('width'), length: inches('length') };
};

/** Dimension lines at the top and the left of something in the corner. */
export const corner = ({ width, length }: Size, style: Style): Dimension[] => [
  { side: 'top', from: 0, to: inchesOf(width), text: lengthOf(width, style) },
  { side: 'left', from: 0, to: inchesOf(length), text: lengthOf(length, style) },
];

/** Dimension lines at the bottom and the right of something inside, from its top left corner. */
export const inner = (
  x: number,
  y: number,
  { width, length }: Size,
  style: Style,
  name: string,
): Dimension[] => [
  { side: 'bottom', from: x, to: x + inchesOf(width), text: `${name} ${lengthOf(width, style)}` },
  { side: 'right', from: y, to: y + inchesOf(length), text: `${name} ${lengthOf(length, style)}` },
];

/** A way to turn things drawn for one direction into the other: `turned` swaps across and along. */
export const turning =
  (turned: boolean) =>
  (across: number, along: number): [number, number] =>
    turned ? [along, across] : [across, along];
