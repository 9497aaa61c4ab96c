import type { Style } from '../measure/format.js';
import { type Row } from '../reckon/answer.js';
import type { Size } from '../reckon/shared.js';
import { type Dimension } from './picture.js';
/** A size to draw with. */
export declare const sidesOf: ({ width, length }: Size) => {
    width: number;
    height: number;
};
/** The size that was given: of the quilt, or of its top. */
export declare const givenSize: (result: {
    working: Row[];
}) => Size;
/** Dimension lines at the top and the left of something in the corner. */
export declare const corner: ({ width, length }: Size, style: Style) => Dimension[];
/** Dimension lines at the bottom and the right of something inside, from its top left corner. */
export declare const inner: (x: number, y: number, { width, length }: Size, style: Style, name: string) => Dimension[];
/** A way to turn things drawn for one direction into the other: `turned` swaps across and along. */
export declare const turning: (turned: boolean) => (across: number, along: number) => [number, number];
