import { css, svg, html, nothing } from 'lit';
import { exact } from '../measure/exact.js';
import { length, number } from '../measure/format.js';
import { rowIn } from '../reckon/answer.js';

/** A result's exact inches, like `52 1/2`, as a number to draw with: of long cut lists too many to read them exactly. */
const inchesOf = (text) => {
    if (text.startsWith('-'))
        return -inchesOf(text.slice(1));
    const parts = text.split(' ').map((part) => part.split('/').map(Number));
    return parts.reduce((all, [top, bottom = 1]) => all + top / bottom, 0);
};
/** The inches of a row of the working; 0 where there is no such row. */
const inchesIn = (result, id) => inchesOf(rowIn(result, id)?.inches ?? '0');
/** A result's exact inches as the reader writes them. */
const lengthOf = (text, style) => length(exact(text), style);
/** The same for two sides: `81 × 96 in`. */
const sizeOf = ({ width, length }, style) => `${number(exact(width), style)} × ${lengthOf(length, style)}`;
const SHEET_WIDTH = 260;
const TALLEST = 330;
const ROW = 19;
const EDGE = 6;
const LETTER = 6.1;
/** Of a narrow letter: words are moved only where they surely do not fit. */
const NARROW = 5;
const LINE = 11;
const round = (value) => Math.round(value * 100) / 100;
/** Draws to scale, with its dimension lines round it. */
const draw = ({ title, width, height, boxes, isTiled, shapes, lines, dimensions = [], }) => {
    const wordsOf = ({ text }) => text.length * LETTER + EDGE;
    const stands = ({ side }) => side === 'left' || side === 'right';
    /** Words too long to stand along a short upright line lie beside it. */
    const beside = (line) => stands(line) &&
        line.text.length * NARROW >
            (line.to - line.from) * Math.min((SHEET_WIDTH - 60) / width, TALLEST / height);
    const margin = (side) => EDGE +
        Math.max(0, ...dimensions.map((line) => line.side === side ? ROW + (beside(line) ? wordsOf(line) - ROW / 2 : 0) : 0));
    const top = margin('top');
    const sides = margin('left') + margin('right');
    const scale = Math.min((SHEET_WIDTH - sides) / width, TALLEST / height);
    const wide = width * scale;
    const bottom = top + height * scale;
    const full = Math.max(wide + sides, SHEET_WIDTH * 0.6);
    const left = margin('left') + (full - wide - sides) / 2;
    const x = (inches) => round(left + inches * scale);
    const y = (inches) => round(top + inches * scale);
    /** Where words lie beside many short lines, some are left out: each has to be clear of those before it. */
    const ends = {};
    const isClear = (line) => {
        const [from, to] = [line.from * scale, line.to * scale];
        const reach = beside(line) ? LINE / 2 : (to - from) / 2;
        const middle = (from + to) / 2;
        if (middle - reach < (ends[line.side] ?? -Infinity))
            return false;
        ends[line.side] = middle + reach;
        return true;
    };
    const path = (points) => `M${points.map(([across, down]) => `${x(across)} ${y(down)}`).join('L')}`;
    const outline = (box) => {
        const [wide, tall] = [round(box.width * scale), round(box.height * scale)];
        return `M${x(box.x)} ${y(box.y)}h${wide}v${tall}h${-wide}z`;
    };
    const drawnAsOne = new Map();
    for (const box of boxes) {
        const key = isTiled ? box.is : box;
        const alike = drawnAsOne.get(key);
        if (alike)
            alike.push(box);
        else
            drawnAsOne.set(key, [box]);
    }
    /** The words of a box lie along it, or stand where only that fits. */
    const wordsIn = ({ label = '', short = '', ...box }) => {
        const { x: from, y: down, width, height } = box.room ?? box;
        const fits = (words, along, across) => along * scale >= words.length * LETTER && across * scale >= LINE;
        const words = [label, short].find((words) => words && (fits(words, width, height) || fits(words, height, width)));
        if (!words)
            return nothing;
        const turn = fits(words, width, height) ? '' : 'rotate(-90)';
        return svg `<text transform="translate(${x(from + width / 2)} ${y(down + height / 2)})${turn}">${words}</text>`;
    };
    /** Drawn level; one at the left or right is turned as a whole. */
    const dimension = (line) => {
        const { side, from, to, text } = line;
        const upright = stands(line);
        const outward = side === 'left' || side === 'top' ? -1 : 1;
        const edge = { left, top, right: left + wide, bottom }[side];
        const level = round(edge + outward * (ROW / 2 + 2));
        const [start, end] = upright ? [-y(to), -y(from)] : [x(from), x(to)];
        const tick = (at) => `M${at} ${round(edge + outward * 2)}V${level + outward * 4}M${at - 3} ${level + 3}l6-6`;
        const middle = (start + end) / 2;
        const lies = beside(line);
        const gap = lies ? 0 : Math.min(wordsOf(line), end - start) / 2;
        return svg `<g transform=${upright ? 'rotate(-90)' : nothing}> <path class="dimension" d="${tick(start)}${tick(end)}M${start} ${level}H${middle - gap}M${middle + gap} ${level}H${end}" /> ${isClear(line) ? svg `<text class="measure" transform="translate(${middle} ${lies ? level + (outward * wordsOf(line)) / 2 : level})${lies ? 'rotate(90)' : ''}">${text}</text>` : nothing} </g>`;
    };
    return html `<svg part="drawing" class="drawing" role="img" aria-label=${title} viewBox="0 0 ${round(full)} ${round(bottom + margin('bottom'))}"> ${[...drawnAsOne.values()].map((alike) => svg `<path class=${alike[0].is} d=${alike.map(outline).join('')} />`)} ${boxes.map(wordsIn)} ${shapes?.map(({ is, points }) => svg `<path class=${is} d="${path(points)}Z" />`)} ${lines?.map(({ is, from, to }) => svg `<path class=${is} d=${path([from, to])} />`)} ${dimensions.map(dimension)} </svg>`;
};
/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
const drawingStyles = css `.drawing{display:block;inline-size:100%;max-inline-size:26em;margin-inline:auto;overflow:visible;direction:ltr}path{vector-effect:non-scaling-stroke;stroke:currentColor;fill:none}text{font-size:11px;text-anchor:middle;dominant-baseline:central;fill:currentColor}.cloth{fill:var(--_wash)}.piece{fill:var(--_wash-strong)}.other{fill:var(--_faint)}.spare{stroke-dasharray:1 3}.quilt{stroke-dasharray:7 4}.seam{stroke:var(--_accent);stroke-width:1.5px;stroke-dasharray:4 3}.fold{stroke-dasharray:10 3 2 3}.dimension{stroke:var(--_soft)}.measure{fill:var(--_accent-text)}`;

export { draw, drawingStyles, inchesIn, inchesOf, lengthOf, sizeOf };
