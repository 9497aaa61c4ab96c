import { type Exact } from '../measure/exact.js';
import type { Cloth, CuttingPlan } from './plan.js';
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
export declare const areaOf: ({ width, height }: Pick<Rectangle, "width" | "height">) => Exact;
/**
 * What is left of a cloth after these boxes are cut from it, with edge-to-edge cuts only: rectangles that do not overlap. Where no
 * such cut parts the boxes, nothing is promised.
 */
export declare const around: (boxes: Rectangle[], { x, y, width, height }: Rectangle) => Rectangle[];
/**
 * What is left when somebody cuts by this plan: the ends of its strips, what is over in a strip, and the rest of each sheet. The
 * strips are cut first, so what they leave is not joined across them.
 */
export declare const freeOf: (plan: CuttingPlan, cloth: Cloth) => Free[];
