import { css, nothing, svg, html } from 'lit';

const PICTURE_WIDTH = 260;
const TALLEST = 175;
/** The pixels of one unit of a drawing on a page with text of 16 px: its words are 12 px high then. */
const PIXELS = 1.1;
const ROW = 19;
const EDGE = 6;
const LETTER = 6.1;
/** The width of a narrow letter. With it, words are moved only if they surely do not fit. */
const NARROW = 5;
const LINE = 11;
const round = (value) => Math.round(value * 100) / 100;
const roomFor = ({ text }) => text.length * LETTER + EDGE;
const stands = ({ side }) => side === 'left' || side === 'right';
/** A picture on its way to SVG: where each inch of it lies, with its dimension lines round it. */
class Drawing {
    /** Where the words on each side end so far. */
    #ends;
    #captions;
    constructor(picture, t) {
        this.picture = picture;
        this.t = t;
        /** Where the words on each side end so far. */
        this.#ends = {};
        this.#captions = new Map();
        this.x = (inches) => round(this.left + inches * this.scale);
        this.y = (inches) => round(this.top + inches * this.scale);
        this.outline = (box) => {
            const [wide, tall] = [round(box.width * this.scale), round(box.height * this.scale)];
            return `M${this.x(box.x)} ${this.y(box.y)}h${wide}v${tall}h${-wide}z`;
        };
        /** The words in a place, level, or upright if only that fits. */
        this.wordsIn = ({ label, short, ...box }) => {
            const { x, y, width, height } = box.room ?? box;
            const fits = (words, along, across) => along * this.scale >= words.length * LETTER && across * this.scale >= LINE;
            const words = [label, short]
                .map((caption) => this.#words(caption))
                .find((words) => words && (fits(words, width, height) || fits(words, height, width)));
            if (!words)
                return nothing;
            const turn = fits(words, width, height) ? '' : 'rotate(-90)';
            return svg `<text transform="translate(${this.x(x + width / 2)} ${this.y(y + height / 2)})${turn}">${words}</text>`;
        };
        /** A dimension line, drawn level; one at the left or right is turned as a whole. */
        this.dimension = (line) => {
            const { side, from, to, text } = line;
            const upright = stands(line);
            const outward = side === 'left' || side === 'top' ? -1 : 1;
            const edge = this.#edgeOf(side);
            const level = round(edge + outward * (ROW / 2 + 2));
            const [start, end] = upright ? [-this.y(to), -this.y(from)] : [this.x(from), this.x(to)];
            const tick = (at) => `M${at} ${round(edge + outward * 2)}V${level + outward * 4}M${at - 3} ${level + 3}l6-6`;
            const middle = (start + end) / 2;
            const lies = this.liesBeside(line);
            const gap = lies ? 0 : Math.min(roomFor(line), end - start) / 2;
            return svg `<g transform=${upright ? 'rotate(-90)' : nothing}> <path class="dimension" d="${tick(start)}${tick(end)}M${start} ${level}H${middle - gap}M${middle + gap} ${level}H${end}" /> ${this.isClear(line) ? svg `<text class="measure" transform="translate(${middle} ${lies ? level + (outward * roomFor(line)) / 2 : level})${lies ? 'rotate(90)' : ''}">${text}</text>` : nothing} </g>`;
        };
        const { width, height, dimensions = [] } = picture;
        this.measures = dimensions.map((line) => ({ ...line, text: t.caption(line.text) }));
        const [left, right] = [this.#margin('left'), this.#margin('right')];
        this.top = this.#margin('top');
        this.scale = Math.min((PICTURE_WIDTH - left - right) / width, TALLEST / height);
        const wide = width * this.scale + left + right;
        const full = Math.max(wide, PICTURE_WIDTH * 0.6);
        this.left = left + (full - wide) / 2;
        this.full = { width: full, height: this.top + height * this.scale + this.#margin('bottom') };
    }
    path(points) {
        return `M${points.map(([across, down]) => `${this.x(across)} ${this.y(down)}`).join('L')}`;
    }
    /** Words that are too long for a short upright line lie beside it. */
    liesBeside(line) {
        const { width, height } = this.picture;
        const scale = Math.min((PICTURE_WIDTH - 60) / width, TALLEST / height);
        return stands(line) && line.text.length * NARROW > (line.to - line.from) * scale;
    }
    /** The room that dimension lines take on a side. */
    #margin(side) {
        const rooms = this.measures
            .filter((line) => line.side === side)
            .map((line) => ROW + (this.liesBeside(line) ? roomFor(line) - ROW / 2 : 0));
        return EDGE + Math.max(0, ...rooms);
    }
    /** Beside many short lines some words are left out, so that none overlaps the one before it. */
    isClear(line) {
        const [from, to] = [line.from * this.scale, line.to * this.scale];
        const reach = this.liesBeside(line) ? LINE / 2 : (to - from) / 2;
        const middle = (from + to) / 2;
        if (middle - reach < (this.#ends[line.side] ?? -Infinity))
            return false;
        this.#ends[line.side] = middle + reach;
        return true;
    }
    /** Boxes that are drawn as one shape. */
    alike() {
        const { boxes, isTiled } = this.picture;
        const alike = new Map();
        for (const box of boxes) {
            const key = isTiled ? box.is : box;
            const others = alike.get(key);
            if (others)
                others.push(box);
            else
                alike.set(key, [box]);
        }
        return [...alike.values()];
    }
    #words(caption) {
        if (!caption)
            return '';
        let words = this.#captions.get(caption);
        if (words === undefined)
            this.#captions.set(caption, (words = this.t.caption(caption)));
        return words;
    }
    /** The edge that a dimension line goes along. */
    #edgeOf(side) {
        const { left, top, scale, picture } = this;
        const [right, bottom] = [left + picture.width * scale, top + picture.height * scale];
        return { left, top, right, bottom }[side];
    }
}
/** Draws to scale, with its dimension lines round it. */
const draw = (picture, t) => {
    const drawing = new Drawing(picture, t);
    const { full } = drawing;
    const { title, boxes, shapes, lines } = picture;
    return html `<svg part="drawing" class="drawing" role="img" aria-label=${t.say(title)} width="${round((full.width * PIXELS) / 16)}em" viewBox="0 0 ${round(full.width)} ${round(full.height)}"> ${drawing.alike().map((alike) => svg `<path class=${alike[0]?.is ?? nothing} d=${alike.map(drawing.outline).join('')} />`)} ${boxes.map(drawing.wordsIn)} ${shapes?.map(({ is, points }) => svg `<path class=${is} d="${drawing.path(points)}Z" />`)} ${shapes?.map(({ words }) => words && drawing.wordsIn(words))} ${lines?.map(({ is, from, to }) => svg `<path class=${is} d=${drawing.path([from, to])} />`)} ${drawing.measures.map(drawing.dimension)} </svg>`;
};
/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
const drawingStyles = css `.drawing{display:block;max-inline-size:100%;block-size:auto;margin-inline:auto;overflow:visible;direction:ltr}path{vector-effect:non-scaling-stroke;stroke:currentColor;fill:none}text{font-size:11px;text-anchor:middle;dominant-baseline:central;fill:currentColor}.cloth{fill:var(--_wash)}.piece{fill:var(--_wash-strong)}.other{fill:var(--_faint)}.spare{stroke-dasharray:1 3}.quilt{stroke-dasharray:7 4}.seam{stroke:var(--_accent);stroke-width:1.5px;stroke-dasharray:4 3}.fold{stroke-dasharray:10 3 2 3}.dimension{stroke:var(--_soft)}.measure{fill:var(--_accent-text)}`;

export { draw, drawingStyles };
