import { css, html, nothing, svg, type TemplateResult } from 'lit';
import { exact } from '../measure/exact.js';
import { length, number, type Style } from '../measure/format.js';
import { rowIn, type Row } from '../reckon/answer.js';

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
export const inchesOf = (text: string): number => {
  if (text.startsWith('-')) return -inchesOf(text.slice(1));
  const parts = text.split(' ').map((part) => part.split('/').map(Number));
  return parts.reduce((all, [top, bottom = 1]) => all + top! / bottom, 0);
};

/** The inches of a row of the working; 0 where there is no such row. */
export const inchesIn = (result: { working: Row[] }, id: string): number =>
  inchesOf(rowIn(result, id)?.inches ?? '0');

/** A result's exact inches as the reader writes them. */
export const lengthOf = (text: string, style: Style): string => length(exact(text), style);

/** The same for two sides: `81 × 96 in`. */
export const sizeOf = ({ width, length }: { width: string; length: string }, style: Style): string =>
  `${number(exact(width), style)} × ${lengthOf(length, style)}`;

const SHEET_WIDTH = 260;
const TALLEST = 330;
const ROW = 19;
const EDGE = 6;
const LETTER = 6.1;
/** Of a narrow letter: words are moved only where they surely do not fit. */
const NARROW = 5;
const LINE = 11;

const round = (value: number): number => Math.round(value * 100) / 100;

/** Draws to scale, with its dimension lines round it. */
export const draw = ({
  title,
  width,
  height,
  boxes,
  isTiled,
  shapes,
  lines,
  dimensions = [],
}: Picture): TemplateResult => {
  const wordsOf = ({ text }: Dimension): number => text.length * LETTER + EDGE;
  const stands = ({ side }: Dimension): boolean => side === 'left' || side === 'right';
  /** Words too long to stand along a short upright line lie beside it. */
  const beside = (line: Dimension): boolean =>
    stands(line) &&
    line.text.length * NARROW >
      (line.to - line.from) * Math.min((SHEET_WIDTH - 60) / width, TALLEST / height);
  const margin = (side: Dimension['side']): number =>
    EDGE +
    Math.max(
      0,
      ...dimensions.map((line) =>
        line.side === side ? ROW + (beside(line) ? wordsOf(line) - ROW / 2 : 0) : 0,
      ),
    );
  const top = margin('top');
  const sides = margin('left') + margin('right');
  const scale = Math.min((SHEET_WIDTH - sides) / width, TALLEST / height);
  const wide = width * scale;
  const bottom = top + height * scale;
  const full = Math.max(wide + sides, SHEET_WIDTH * 0.6);
  const left = margin('left') + (full - wide - sides) / 2;
  const x = (inches: number): number => round(left + inches * scale);
  const y = (inches: number): number => round(top + inches * scale);
  /** Where words lie beside many short lines, some are left out: each has to be clear of those before it. */
  const ends: Partial<Record<Dimension['side'], number>> = {};
  const isClear = (line: Dimension): boolean => {
    const [from, to] = [line.from * scale, line.to * scale];
    const reach = beside(line) ? LINE / 2 : (to - from) / 2;
    const middle = (from + to) / 2;
    if (middle - reach < (ends[line.side] ?? -Infinity)) return false;
    ends[line.side] = middle + reach;
    return true;
  };
  const path = (points: [number, number][]): string =>
    `M${points.map(([across, down]) => `${x(across)} ${y(down)}`).join('L')}`;

  const outline = (box: Box): string => {
    const [wide, tall] = [round(box.width * scale), round(box.height * scale)];
    return `M${x(box.x)} ${y(box.y)}h${wide}v${tall}h${-wide}z`;
  };
  const drawnAsOne = new Map<unknown, Box[]>();
  for (const box of boxes) {
    const key = isTiled ? box.is : box;
    const alike = drawnAsOne.get(key);
    if (alike) alike.push(box);
    else drawnAsOne.set(key, [box]);
  }

  /** The words of a box lie along it, or stand where only that fits. */
  const wordsIn = ({ label = '', short = '', ...box }: Box): unknown => {
    const { x: from, y: down, width, height } = box.room ?? box;
    const fits = (words: string, along: number, across: number): boolean =>
      along * scale >= words.length * LETTER && across * scale >= LINE;
    const words = [label, short].find(
      (words) => words && (fits(words, width, height) || fits(words, height, width)),
    );
    if (!words) return nothing;
    const turn = fits(words, width, height) ? '' : 'rotate(-90)';
    return svg`<text transform="translate(${x(from + width / 2)} ${y(down + height / 2)})${turn}">${words}</text>`;
  };

  /** Drawn level; one at the left or right is turned as a whole. */
  const dimension = (line: Dimension): unknown => {
    const { side, from, to, text } = line;
    const upright = stands(line);
    const outward = side === 'left' || side === 'top' ? -1 : 1;
    const edge = { left, top, right: left + wide, bottom }[side];
    const level = round(edge + outward * (ROW / 2 + 2));
    const [start, end] = upright ? [-y(to), -y(from)] : [x(from), x(to)];
    const tick = (at: number): string =>
      `M${at} ${round(edge + outward * 2)}V${level + outward * 4}M${at - 3} ${level + 3}l6-6`;
    const middle = (start + end) / 2;
    const lies = beside(line);
    const gap = lies ? 0 : Math.min(wordsOf(line), end - start) / 2;
    return svg`<g transform=${upright ? 'rotate(-90)' : nothing}>
      <path class="dimension" d="${tick(start)}${tick(end)}M${start} ${level}H${middle - gap}M${middle + gap} ${level}H${end}" />
      ${isClear(line) ? svg`<text class="measure" transform="translate(${middle} ${lies ? level + (outward * wordsOf(line)) / 2 : level})${lies ? 'rotate(90)' : ''}">${text}</text>` : nothing}
    </g>`;
  };

  return html`<svg part="drawing" class="drawing" role="img" aria-label=${title} viewBox="0 0 ${round(full)} ${round(bottom + margin('bottom'))}">
    ${[...drawnAsOne.values()].map((alike) => svg`<path class=${alike[0]!.is} d=${alike.map(outline).join('')} />`)}
    ${boxes.map(wordsIn)}
    ${shapes?.map(({ is, points }) => svg`<path class=${is} d="${path(points)}Z" />`)}
    ${lines?.map(({ is, from, to }) => svg`<path class=${is} d=${path([from, to])} />`)} ${dimensions.map(dimension)}
  </svg>`;
};

/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
export const drawingStyles = css`
  .drawing {
    display: block;
    inline-size: 100%;
    max-inline-size: 26em;
    margin-inline: auto;
    overflow: visible;
    direction: ltr;
  }
  path { vector-effect: non-scaling-stroke; stroke: currentColor; fill: none; }
  text { font-size: 11px; text-anchor: middle; dominant-baseline: central; fill: currentColor; }
  .cloth { fill: var(--_wash); }
  .piece { fill: var(--_wash-strong); }
  .other { fill: var(--_faint); }
  .spare { stroke-dasharray: 1 3; }
  .quilt { stroke-dasharray: 7 4; }
  .seam { stroke: var(--_accent); stroke-width: 1.5px; stroke-dasharray: 4 3; }
  .fold { stroke-dasharray: 10 3 2 3; }
  .dimension { stroke: var(--_soft); }
  .measure { fill: var(--_accent-text); }
`;
