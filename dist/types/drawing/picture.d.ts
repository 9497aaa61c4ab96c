import { type TemplateResult } from 'lit';
import { type Style } from '../measure/format.js';
import { type Row } from '../reckon/answer.js';
/** What a shape stands for; the look is in {@link drawingStyles}. */
type Stuff = 'cloth' | 'piece' | 'other' | 'quilt' | 'spare';
/** In inches from the top left corner. */
export interface Rectangle {
    x: number;
    y: number;
    width: number;
    height: number;
}
export interface Box extends Rectangle {
    is: Stuff;
    /** Words in its middle, left out where they do not fit. */
    label?: string;
    /** Fewer words, where those do not fit. */
    short?: string;
    /** Where words have to stay. Default: all of it. */
    room?: Rectangle;
}
/** Any other closed shape: corner points in inches. */
export interface Shape {
    points: [number, number][];
    is: Stuff;
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
    text: string;
}
/** A drawing to scale. All measures are inches. */
export interface Picture {
    /** What it shows, for someone who cannot see it. */
    title: string;
    /** A heading over it, where there are several. */
    caption?: string;
    width: number;
    height: number;
    boxes: Box[];
    /** No two boxes that look alike overlap: they are drawn as one shape, since a page feels a thousand. */
    isTiled?: boolean;
    shapes?: Shape[];
    lines?: Line[];
    dimensions?: Dimension[];
}
/** A result's exact inches, like `52 1/2`, as a number to draw with: of long cut lists too many to read them exactly. */
export declare const inchesOf: (text: string) => number;
/** The inches of a row of the working; 0 where there is no such row. */
export declare const inchesIn: (result: {
    working: Row[];
}, id: string) => number;
/** A result's exact inches as the reader writes them. */
export declare const lengthOf: (text: string, style: Style) => string;
/** The same for two sides: `81 × 96 in`. */
export declare const sizeOf: ({ width, length }: {
    width: string;
    length: string;
}, style: Style) => string;
/** Draws to scale, with its dimension lines round it. */
export declare const draw: ({ title, width, height, boxes, isTiled, shapes, lines, dimensions, }: Picture) => TemplateResult;
/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
export declare const drawingStyles: import("lit").CSSResult;
export {};
