export { wholeQuilt } from '../workbook/whole-quilt.js';
/** A drawing as an SVG file. */
export declare const svgFile: (drawing: SVGSVGElement) => Promise<Blob>;
/** The same as a PNG file. */
export declare const pngFile: (drawing: SVGSVGElement) => Promise<Blob>;
