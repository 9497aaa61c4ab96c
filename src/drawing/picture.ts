import { css, html, nothing, svg, type TemplateResult } from 'lit';
import { exact } from '../measure/exact.js';
import { length, type Style } from '../measure/format.js';
import type { Row } from '../reckon/book.js';

/** What a shape stands for; the look is in {@link drawingStyles}. */
export type Stuff = 'cloth' | 'piece' | 'other' | 'quilt' | 'spare' | 'outline';

/** A rectangle, in inches from the top left corner. */
export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
  is: Stuff;
  /** Words in its middle, left out where they do not fit. */
  label?: string;
}

/** Any other closed shape: corner points in inches. */
export interface Shape {
  points: [number, number][];
  is: Stuff;
}

export interface Line {
  from: [number, number];
  to: [number, number];
  is: 'seam' | 'fold' | 'grain';
}

/** A dimension line along one side of the picture; `row` 1 is the nearest to it. */
export interface Dimension {
  side: 'top' | 'right' | 'bottom' | 'left';
  from: number;
  to: number;
  text: string;
  row?: number;
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
  shapes?: Shape[];
  lines?: Line[];
  dimensions?: Dimension[];
}

/** A result's exact inches as a number to draw with. */
export const inchesOf = (text: string): number => exact(text).valueOf();

/** The inches of a row of the working; 0 where there is no such row. */
export const inchesIn = ({ working }: { working: Row[] }, id: string): number =>
  inchesOf(working.find((row) => row.id === id)?.inches ?? '0');

/** A result's exact inches as the reader writes them. */
export const lengthOf = (text: string, style: Style): string => length(exact(text), style);

const SHEET_WIDTH = 300;
const TALLEST = 330;
const ROW = 19;
const EDGE = 6;
const LETTER = 6.1;

const rowsOn = ({ dimensions = [] }: Picture, side: Dimension['side']): number =>
  Math.max(0, ...dimensions.filter((line) => line.side === side).map((line) => line.row ?? 1));

const round = (value: number): number => Math.round(value * 100) / 100;

/** Draws to scale, with its dimension lines round it. */
export const draw = (picture: Picture): TemplateResult => {
  const left = EDGE + rowsOn(picture, 'left') * ROW;
  const top = EDGE + rowsOn(picture, 'top') * ROW;
  const right = EDGE + rowsOn(picture, 'right') * ROW;
  const bottom = EDGE + rowsOn(picture, 'bottom') * ROW;
  const scale = Math.min((SHEET_WIDTH - left - right) / picture.width, TALLEST / picture.height);
  const wide = picture.width * scale;
  const high = picture.height * scale;
  const full = Math.max(left + wide + right, SHEET_WIDTH * 0.6);
  const start = left + (full - left - wide - right) / 2;
  const x = (inches: number): number => round(start + inches * scale);
  const y = (inches: number): number => round(top + inches * scale);

  const label = ({ x: at, y: down, width, height, label }: Box): unknown => {
    if (!label) return nothing;
    const room = label.length * LETTER;
    const turned = width * scale < room && height * scale >= room && width * scale > 11;
    if (!turned && (width * scale < room || height * scale < 11)) return nothing;
    const middle = [x(at + width / 2), y(down + height / 2)];
    return svg`<text class="label" x=${middle[0]!} y=${middle[1]!} transform=${turned ? `rotate(-90 ${middle.join(' ')})` : nothing}>${label}</text>`;
  };

  const dimension = ({ side, from, to, text, row = 1 }: Dimension): unknown => {
    const upright = side === 'left' || side === 'right';
    const away = (row - 0.5) * ROW + 2;
    const level = side === 'top' ? top - away : side === 'bottom' ? top + high + away : side === 'left' ? start - away : start + wide + away;
    const edge = side === 'top' ? top : side === 'bottom' ? top + high : side === 'left' ? start : start + wide;
    const [a, b] = upright ? [y(from), y(to)] : [x(from), x(to)];
    const outward = Math.sign(level - edge);
    const point = (along: number, across: number): string => (upright ? `${round(across)} ${round(along)}` : `${round(along)} ${round(across)}`);
    const tick = (at: number): string => `M${point(at, edge + outward * 2)}L${point(at, level + outward * 4)}M${point(at - 3, level + 3)}L${point(at + 3, level - 3)}`;
    const gap = Math.min(text.length * LETTER + 6, b - a) / 2;
    const middle = (a + b) / 2;
    const [tx, ty] = upright ? [round(level), round(middle)] : [round(middle), round(level)];
    return svg`<path class="dimension" d=${`${tick(a)}${tick(b)}M${point(a, level)}L${point(middle - gap, level)}M${point(middle + gap, level)}L${point(b, level)}`} />
      <text class="measure" x=${tx} y=${ty} transform=${upright ? `rotate(-90 ${tx} ${ty})` : nothing}>${text}</text>`;
  };

  const height = round(top + high + bottom);
  return html`<svg part="drawing" class="drawing" role="img" aria-label=${picture.title} viewBox="0 0 ${round(full)} ${height}">
    ${picture.boxes.map(
      (box) =>
        svg`<rect class=${box.is} x=${x(box.x)} y=${y(box.y)} width=${round(box.width * scale)} height=${round(box.height * scale)} />${label(box)}`,
    )}
    ${picture.shapes?.map((shape) => svg`<path class=${shape.is} d=${`M${shape.points.map(([px, py]) => `${x(px)} ${y(py)}`).join('L')}Z`} />`)}
    ${picture.lines?.map(({ from, to, is }) => svg`<path class=${is} d=${`M${x(from[0])} ${y(from[1])}L${x(to[0])} ${y(to[1])}`} />`)}
    ${picture.dimensions?.map(dimension)}
  </svg>`;
};

/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
export const drawingStyles = css`
  .drawing {
    display: block;
    inline-size: 100%;
    max-inline-size: 30rem;
    margin-inline: auto;
    overflow: visible;
    direction: ltr;
    font-variant-numeric: diagonal-fractions tabular-nums;
  }
  .drawing rect,
  .drawing path {
    vector-effect: non-scaling-stroke;
    stroke: var(--_ink);
    stroke-width: 1px;
    fill: none;
  }
  .drawing .cloth { fill: var(--_wash); }
  .drawing .piece { fill: var(--_wash-strong); }
  .drawing .other { fill: var(--_wash-other); }
  .drawing .spare { fill: none; stroke-dasharray: 1 3; }
  .drawing .quilt { fill: none; stroke-dasharray: 7 4; }
  .drawing .seam { stroke: var(--_accent); stroke-width: 1.5px; stroke-dasharray: 4 3; }
  .drawing .fold, .drawing .grain { stroke-dasharray: 10 3 2 3; }
  .drawing .dimension { stroke: var(--_soft); }
  .drawing text {
    font-family: inherit;
    font-size: 11px;
    text-anchor: middle;
    dominant-baseline: central;
    fill: var(--_ink);
  }
  .drawing .measure { fill: var(--_accent-text); }
`;
