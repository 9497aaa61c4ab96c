import { css, html, nothing, svg, type TemplateResult } from 'lit';
import type { Box, Caption, Dimension, Line, Picture, Shape, Worded } from '../ledger/picture.js';
import type { Teller } from '../words/teller.js';
import { fillOf, type Swatches } from './swatch.js';

/** How large a picture is: as wide as this, or as high, whichever comes first. */
const ROOMS = {
  usual: { wide: 220, tall: 175 },
  pieces: { wide: 360, tall: 420 },
  sizes: { wide: 480, tall: 640 },
};
/** The pixels of one unit of a drawing on a page with text of 16 px: its words are 12 px high then. */
const PIXELS = 1.1;
const ROW = 19;
const EDGE = 6;
const LETTER = 6.1;
/** The width of a narrow letter. With it, words are moved only if they surely do not fit. */
const NARROW = 5;
const LINE = 11;
/** Words beside an upright line keep off its ticks. */
const BESIDE = 4;
/** What the ticks at the ends of a dimension line take of it. */
const TICKS = 12;
/** The side of a tile of a picture that fills a piece. */
const TILE = 40;
/** How many patterns there are on the page so far: each has a name of its own. */
let patterns = 0;

/** Whether a box lies on others, in all. */
const liesOn = ({ x, y, width, height }: Box, others: Box[]): boolean =>
  Math.min(...others.map((other) => other.x)) <= x &&
  Math.min(...others.map((other) => other.y)) <= y &&
  Math.max(...others.map((other) => other.x + other.width)) >= x + width &&
  Math.max(...others.map((other) => other.y + other.height)) >= y + height;

const round = (value: number): number => Math.round(value * 100) / 100;

/** A dimension line with its words. */
interface Measure extends Omit<Dimension, 'text'> {
  text: string;
}

/** Where the words of a line are. */
type Place = 'in' | 'along' | 'beside';

/** How much room words in a piece take. A whole word keeps a letter's width off the words beside it. */
const roomOf = (words: string): number => (words.length + (/\p{L}{2}/u.test(words) ? 1 : 0)) * LETTER;

const roomFor = ({ text }: Measure): number => text.length * LETTER + EDGE;
const stands = ({ side }: Measure): boolean => side === 'left' || side === 'right';

/** A picture on its way to SVG: where each inch of it lies, with its dimension lines round it. */
class Drawing {
  readonly measures: Measure[];
  /** Pixels of an inch. */
  scale: number;
  readonly left: number;
  readonly top: number;
  /** The whole drawing, its dimension lines too. */
  readonly full: { width: number; height: number };
  readonly #places = new Map<Measure, Place>();
  /** Where the words on each side end so far. */
  readonly #ends: Partial<Record<Dimension['side'], number>> = {};
  readonly #captions = new Map<Caption, string>();
  readonly #isOfSeveral: boolean;
  readonly #only: string | undefined;

  constructor(
    readonly picture: Picture,
    readonly t: Teller,
    readonly swatches: Swatches | undefined,
  ) {
    const { width, height, boxes, shapes = [], dimensions = [] } = picture;
    const fabrics = new Set([...boxes, ...shapes].flatMap(({ fabric }) => fabric || []));
    this.#isOfSeveral = fabrics.size > 1;
    this.#only = this.#isOfSeveral ? undefined : [...fabrics][0];
    this.measures = dimensions.map((line) => ({ ...line, text: t.caption(line.text) }));
    const scaleBeside = (margins: number): number =>
      Math.min((this.#room.wide - margins) / width, this.#room.tall / height);
    this.scale = scaleBeside(2 * (EDGE + ROW));
    let [left, right] = [0, 0];
    // Words that lie beside a line take room, so what was long enough for its words may not be any more.
    for (let turn = 0; turn < 2; turn += 1) {
      for (const line of this.measures) this.#places.set(line, this.#placeOf(line));
      [left, right] = [this.#margin('left'), this.#margin('right')];
      this.scale = scaleBeside(left + right);
    }
    this.top = this.#margin('top');
    const wide = width * this.scale + left + right;
    const full = Math.max(wide, this.#room.wide * 0.6);
    this.left = left + (full - wide) / 2;
    this.full = { width: full, height: this.top + height * this.scale + this.#margin('bottom') };
  }

  x = (inches: number): number => round(this.left + inches * this.scale);
  y = (inches: number): number => round(this.top + inches * this.scale);

  path(points: [number, number][]): string {
    return `M${points.map(([across, down]) => `${this.x(across)} ${this.y(down)}`).join('L')}`;
  }

  /** Where the words of a line are: in it, or beside a short upright one. If it is the only one on its side, they may stand along it. */
  #placeOf(line: Measure): Place {
    const missing = line.text.length * NARROW + TICKS - (line.to - line.from) * this.scale;
    if (!stands(line) || missing <= 0) return 'in';
    const isAlone = this.measures.filter(({ side }) => side === line.side).length === 1;
    return isAlone && missing <= ROW * 2 ? 'along' : 'beside';
  }

  /** What words beside a line take, from the line on. */
  #reach(line: Measure): number {
    const place = this.#places.get(line);
    if (place === 'in') return 0;
    return BESIDE + (place === 'along' ? LINE : roomFor(line));
  }

  /** The room that dimension lines take on a side. */
  #margin(side: Dimension['side']): number {
    const rooms = this.measures
      .filter((line) => line.side === side)
      .map((line) => Math.max(ROW, ROW / 2 + this.#reach(line)));
    return EDGE + Math.max(0, ...rooms);
  }

  /** Beside many short lines some words are left out, so that none overlaps the one before it. */
  isClear(line: Measure): boolean {
    const [from, to] = [line.from * this.scale, line.to * this.scale];
    const reach = this.#places.get(line) === 'beside' ? LINE / 2 : (to - from) / 2;
    const middle = (from + to) / 2;
    if (middle - reach < (this.#ends[line.side] ?? -Infinity)) return false;
    this.#ends[line.side] = middle + reach;
    return true;
  }

  get #room(): (typeof ROOMS)['usual'] {
    return ROOMS[this.picture.largeFor ?? 'usual'];
  }

  outline = (box: Box): string => {
    const [wide, tall] = [round(box.width * this.scale), round(box.height * this.scale)];
    return `M${this.x(box.x)} ${this.y(box.y)}h${wide}v${tall}h${-wide}z`;
  };

  /** What is drawn as one shape: all that looks the same, where it never overlaps. */
  private alike<Piece extends Pick<Box, 'is' | 'fabric'>>(pieces: Piece[]): Piece[][] {
    const alike = new Map<unknown, Piece[]>();
    for (const piece of pieces) {
      const key = this.picture.isTiled ? `${piece.is} ${piece.fabric ?? ''}` : piece;
      const others = alike.get(key);
      if (others) others.push(piece);
      else alike.set(key, [piece]);
    }
    return [...alike.values()];
  }

  /** The outline of a shape. */
  closed = ({ points }: Shape): string => `${this.path(points)}Z`;

  /** The same shapes, all alike, as one. */
  pieces<Piece extends Pick<Box, 'is' | 'fabric'>>(all: Piece[], outline: (one: Piece) => string): unknown {
    return this.alike(all).map(
      (alike) =>
        svg`<path class=${this.#classes(alike[0]?.is, alike[0] && this.#under(alike[0]))} d=${alike.map(outline).join('')} fill=${this.fill(alike[0]?.fabric)} />`,
    );
  }

  #words(caption: Caption | undefined): string {
    if (!caption) return '';
    let words = this.#captions.get(caption);
    if (words === undefined) this.#captions.set(caption, (words = this.t.caption(caption)));
    return words;
  }

  /** What words in a piece may be, the best first. If the picture has several fabrics, they begin with its letter. A letter stays level. */
  #wordsFor({ label, short }: Worded, letter: string | undefined): string[] {
    const captions = this.picture.largeFor === 'sizes' ? [short, label] : [label, short];
    const own = captions.map((caption) => this.#words(caption)).filter(Boolean);
    if (!letter || !this.#isOfSeveral) return own;
    return [
      ...own.filter((words) => words !== letter).map((words) => `${letter} · ${words}`),
      ...own,
      letter,
    ];
  }

  /** The words in a place, level, or upright if only that fits. */
  wordsIn = (worded: Worded, fabric?: string): unknown => {
    const { x, y, width, height } = worded.room ?? worded;
    const fits = (words: string, along: number, across: number): boolean =>
      along * this.scale >= roomOf(words) && across * this.scale >= LINE;
    const words = this.#wordsFor(worded, fabric).find(
      (words) => fits(words, width, height) || (words !== fabric && fits(words, height, width)),
    );
    if (!words) return nothing;
    const turn = fits(words, width, height) ? '' : 'rotate(-90)';
    return svg`<text transform="translate(${this.x(x + width / 2)} ${this.y(y + height / 2)})${turn}" class=${this.#lookOf(fabric) ?? nothing}>${words}</text>`;
  };

  /** The look of words and lines on a fabric. */
  #lookOf(fabric: string | undefined): string | undefined {
    const fill = fillOf(this.swatches, fabric);
    return fill && ('isDark' in fill && fill.isDark ? 'on-dark' : 'on-light');
  }

  #classes(is: string | undefined, fabric: string | undefined): unknown {
    return [is, this.#lookOf(fabric)].filter(Boolean).join(' ') || nothing;
  }

  /** The fabric under an outline: its own, or the only one if it lies on that. */
  #under(piece: Pick<Box, 'is' | 'fabric'>): string | undefined {
    const { boxes } = this.picture;
    if (piece.fabric || !('x' in piece) || piece.is !== 'quilt') return piece.fabric;
    const cloth = boxes.filter(({ fabric }) => fabric && fabric === this.#only);
    return liesOn(piece as Box, cloth) ? this.#only : undefined;
  }

  /** Seams and folds lie on the cloth. */
  line = ({ is, from, to }: Line): unknown =>
    svg`<path class=${this.#classes(is, this.#only)} d=${this.path([from, to])} />`;

  /** What a piece of a fabric is filled with. */
  fill = (fabric: string | undefined): unknown => {
    const fill = fillOf(this.swatches, fabric);
    if (!fill) return nothing;
    return 'colour' in fill ? fill.colour : `url(#${this.#patternOf(fill.picture)})`;
  };

  /** The pictures of fabrics, each with the name of its pattern. */
  readonly #patterns = new Map<string, string>();

  #patternOf(address: string): string {
    const name = this.#patterns.get(address) ?? `swatch-${(patterns += 1)}`;
    this.#patterns.set(address, name);
    return name;
  }

  /** The patterns of all pictures that fill something. */
  patterns(): unknown {
    return [...this.#patterns].map(
      ([address, name]) => svg`<pattern id=${name} patternUnits="userSpaceOnUse" width=${TILE} height=${TILE}>
        <rect class="cloth" width=${TILE} height=${TILE} />
        <image href=${address} width=${TILE} height=${TILE} preserveAspectRatio="xMidYMid slice" />
      </pattern>`,
    );
  }

  /** The edge that a dimension line goes along. */
  #edgeOf(side: Dimension['side']): number {
    const { left, top, scale, picture } = this;
    const [right, bottom] = [left + picture.width * scale, top + picture.height * scale];
    return { left, top, right, bottom }[side];
  }

  /** A dimension line, drawn level; one at the left or right is turned as a whole. */
  dimension = (line: Measure): unknown => {
    const { side, from, to, text } = line;
    const upright = stands(line);
    const outward = side === 'left' || side === 'top' ? -1 : 1;
    const edge = this.#edgeOf(side);
    const level = round(edge + outward * (ROW / 2 + 2));
    const [start, end] = upright ? [-this.y(to), -this.y(from)] : [this.x(from), this.x(to)];
    const tick = (at: number): string =>
      `M${at} ${round(edge + outward * 2)}V${level + outward * 4}M${at - 3} ${level + 3}l6-6`;
    const middle = (start + end) / 2;
    const place = this.#places.get(line);
    const gap = place === 'in' ? Math.min(roomFor(line), end - start) / 2 : 0;
    const off = place === 'in' ? 0 : (outward * (BESIDE + this.#reach(line))) / 2;
    return svg`<g transform=${upright ? 'rotate(-90)' : nothing}>
      <path class="dimension" d="${tick(start)}${tick(end)}M${start} ${level}H${middle - gap}M${middle + gap} ${level}H${end}" />
      ${this.isClear(line) ? svg`<text class="measure" transform="translate(${middle} ${level + off})${place === 'beside' ? 'rotate(90)' : ''}">${text}</text>` : nothing}
    </g>`;
  };
}

/** Draws to scale, with its dimension lines round it. What is cut from a fabric with a swatch is filled with that. */
export const draw = (picture: Picture, t: Teller, swatches?: Swatches): TemplateResult => {
  const drawing = new Drawing(picture, t, swatches);
  const { full } = drawing;
  const { title, boxes, shapes = [], lines } = picture;
  const pieces = [
    drawing.pieces(boxes, drawing.outline),
    boxes.map((box) => drawing.wordsIn(box, box.fabric)),
    drawing.pieces(shapes, drawing.closed),
    shapes.map(({ words, fabric }) => words && drawing.wordsIn(words, fabric)),
  ];
  return html`<svg part="drawing" class="drawing" role="img" aria-label=${t.say(title)} width="${round((full.width * PIXELS) / 16)}em" viewBox="0 0 ${round(full.width)} ${round(full.height)}">
    ${drawing.patterns()} ${pieces}
    ${lines?.map(drawing.line)} ${drawing.measures.map(drawing.dimension)}
  </svg>`;
};

/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
export const drawingStyles = css`
  .drawing {
    display: block;
    max-inline-size: 100%;
    block-size: auto;
    margin-inline: auto;
    overflow: visible;
    direction: ltr;
  }
  path { vector-effect: non-scaling-stroke; stroke: currentColor; }
  path:not([fill]) { fill: none; }
  text { font-size: 11px; text-anchor: middle; dominant-baseline: central; fill: currentColor; }
  .cloth:not([fill]) { fill: var(--_wash); }
  .piece:not([fill]) { fill: var(--_wash-strong); }
  .other:not([fill]) { fill: var(--_faint); }
  /* Black or white, with a line of the other round it: read on any cloth. */
  text.on-light { fill: #000; stroke: #fff; }
  text.on-dark { fill: #fff; stroke: #000; }
  text:is(.on-light, .on-dark) { stroke-width: 2px; stroke-linejoin: round; paint-order: stroke; }
  /* Lines are seen on their cloth too, on a light page and on a dark one. */
  path.on-light { stroke: #333; }
  path.on-dark { stroke: #ddd; }
  .spare { stroke-dasharray: 1 3; }
  .quilt { stroke-dasharray: 7 4; }
  .seam { stroke: var(--_accent); }
  path.seam.on-light { stroke: color-mix(in srgb, var(--_accent) 60%, #000); }
  path.seam.on-dark { stroke: color-mix(in srgb, var(--_accent) 40%, #fff); }
  .seam { stroke-width: 1.5px; stroke-dasharray: 4 3; }
  .fold { stroke-dasharray: 10 3 2 3; }
  .dimension { stroke: var(--_soft); }
  .measure { fill: var(--_accent-text); }
  [fill] { print-color-adjust: exact; }
  @media (forced-colors: active) {
    [fill] { fill: none; }
    path:is(.on-light, .on-dark) { stroke: CanvasText; }
    text, text:is(.on-light, .on-dark) { fill: CanvasText; stroke: none; }
  }
`;
