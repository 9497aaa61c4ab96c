import { type Exact } from '../../measure/exact.js';
/** How a patch is divided, and which way its seams run. */
export type PatchShape = 
/** One piece of one fabric. */
{
    kind: 'plain';
}
/** Two triangles. The seam rises to the right, or falls. The first letter is that on the left. */
 | {
    kind: 'half';
    seam: 'rising' | 'falling';
}
/** Four triangles, clockwise from the top. */
 | {
    kind: 'quarter';
}
/** A goose between two pieces of sky. The letters are sky, goose, sky, from the left or from the top. */
 | {
    kind: 'goose';
    flies: Flight;
}
/** A square on point, and its four corners. */
 | {
    kind: 'inside';
};
export declare const FLIGHTS: readonly ["up", "down", "left", "right"];
/** The way a goose flies: to the side where its point is. */
export type Flight = (typeof FLIGHTS)[number];
/** A patch as somebody wrote it: its letters, in the order of its kind, and how it is divided. */
export type Patch = PatchShape & {
    letters: string[];
};
/** A patch in its place: cells from the left and from the top, and how many it covers. */
export type PlacedPatch = Patch & {
    column: number;
    row: number;
    across: number;
    down: number;
};
/** A block of equal cells. The patches cover it, and each cell only once. */
export interface Chart {
    columns: number;
    rows: number;
    patches: PlacedPatch[];
}
/** What a patch is, as it is written. Undefined if nobody can read it. */
export declare const patchOf: (written: string) => Patch | undefined;
export declare const partsOf: ({ kind }: Pick<Patch, "kind">) => Exact[];
/** How many pieces of cloth a patch is sewn from. */
export declare const PIECES: Record<Patch['kind'], number>;
