import type { Exact } from '../measure/exact.js';
import { type Message, sayings } from '../measure/message.js';
import type { Size } from './quilt.js';

/** What a shape means. */
export type Stuff = 'cloth' | 'piece' | 'other' | 'quilt' | 'spare';

/** In inches from the top left corner. */
export interface Rectangle {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** A text in a drawing: words, or a length. */
export type Caption = Message | Exact;

/** A place for words. */
export interface Worded extends Rectangle {
  /** Words in its middle. They are left out if they do not fit. */
  label?: Caption | undefined;
  /** Fewer words, if those do not fit. */
  short?: Caption | undefined;
  /** The part of it where words may be. Default: all of it. */
  room?: Rectangle;
}

export interface Box extends Worded {
  is: Stuff;
  /** The letter of the fabric that it is cut from. */
  fabric?: string | undefined;
}

/** Any other closed shape: corner points in inches. */
export interface Shape {
  points: [number, number][];
  is: Stuff;
  /** The letter of the fabric that it is cut from. */
  fabric?: string | undefined;
  words?: Worded;
}

export interface Line {
  from: [number, number];
  to: [number, number];
  is: 'seam' | 'fold';
}

/** A dimension line along one side of the picture. */
export interface Dimension {
  side: 'top' | 'right' | 'bottom' | 'left';
  from: number;
  to: number;
  text: Caption;
}

/** A drawing to scale, in inches. */
export interface Picture {
  /** What it shows, for someone who cannot see it. */
  title: Message;
  /** A heading above it, if there are several. */
  caption?: Message;
  width: number;
  height: number;
  boxes: Box[];
  /** What looks the same never overlaps, so it can be drawn as one shape. A thousand shapes would make the page slow. */
  isTiled?: boolean;
  /** Why it is drawn larger than others: for its many small pieces, or for the size of each, because they are cut as it shows. */
  largeFor?: 'pieces' | 'sizes';
  shapes?: Shape[];
  lines?: Line[];
  dimensions?: Dimension[];
}

export interface PictureSayings {
  /** The length of a thing inside the picture: `quilt 60 in`. */
  quiltSide: { side: Exact };
  topSide: { side: Exact };
  boughtSide: { side: Exact };
}

export const sayInPicture = sayings<PictureSayings>();

/** The letter of a part's fabric, by its place among those of the part. The last one is for all that come after it. */
export const letterAt = (letters: string[] = [], at = 0): string | undefined => letters[at] ?? letters.at(-1);

/** A size to draw with. */
export const drawnSize = ({ width, length }: Size): { width: number; height: number } => ({
  width: width.valueOf(),
  height: length.valueOf(),
});

/** Dimension lines at the top and the left of something in the corner. */
export const corner = ({ width, length }: Size): Dimension[] => [
  { side: 'top', from: 0, to: width.valueOf(), text: width },
  { side: 'left', from: 0, to: length.valueOf(), text: length },
];

/** Dimension lines at the bottom and the right of something inside, from its top left corner. */
export const inner = (
  x: number,
  y: number,
  { width, length }: Size,
  called: 'quiltSide' | 'topSide' | 'boughtSide',
): Dimension[] => [
  { side: 'bottom', from: x, to: x + width.valueOf(), text: sayInPicture(called, { side: width }) },
  { side: 'right', from: y, to: y + length.valueOf(), text: sayInPicture(called, { side: length }) },
];

/** Turns what was drawn for one direction into the other: `turned` swaps across and along. */
export const turning =
  (turned: boolean) =>
  (across: number, along: number): [number, number] =>
    turned ? [along, across] : [across, along];
