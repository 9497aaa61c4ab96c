import type { blockFields, BlockRow, BlockSayings, FabricNeed } from '../../calculators/block/shape.js';
import { Purchase } from '../../ledger/purchase.js';
import type { CommonLabel } from '../common.js';
import type { Forms, Teller } from '../teller.js';
import type { CalculatorWords } from '../vocabulary.js';
import { onSheets, planned, SHEET_HINT } from './planned.js';

const BLOCKS: Forms = { one: 'block', other: 'blocks' };

const WAYS = { one: 'one at a time', two: 'two at a time', four: 'four at a time', eight: 'eight at a time' };

const ROWS = { patches: 'patch by patch', strips: 'from strips, sewn and cut across' };

const PATCHES = 'A, or A/B, A\\B, A/B/C/D, B A B, B in A';

/** What each fabric takes: `A 12 in, B 9 1/2 in`. */
const needs = (fabrics: FabricNeed[], t: Teller): string =>
  fabrics
    .map(({ fabric, need }) => `${fabric} ${need instanceof Purchase ? t.bought(need) : t.l(need)}`)
    .join(', ');

/** The block's words in English. */
export const block: CalculatorWords<typeof blockFields, BlockRow, BlockSayings, CommonLabel> = {
  title: 'Block',
  labels: {
    chart: 'Chart',
    block: 'Block, finished',
    count: 'How many blocks',
    method: 'Made at a time',
    sheet: 'Cut from',
    oneWay: 'One-way print',
    seam: 'Seam allowance',
    price: 'Price of a yard, a metre or a sheet',
    week: 'Week',
    cell: 'One cell, finished',
    cellLength: 'One cell, finished height',
    unfinished: 'Block before it is sewn in',
    patches: 'Patches in all',
    halvesOtherwise: 'Cloth, half-square triangles made the other way',
    geeseOtherwise: 'Cloth, geese made the other way',
    rowsOtherwise: 'Cloth, rows made the other way',
  },
  hints: {
    chart:
      'A/B or A\\B: half-square triangles. B\u00a0A\u00a0B\u00a02x1: a goose on two cells, flying up. Add “down” behind it, and it flies down. B\u00a0in\u00a0A: a square of B, on point, in one of A',
    count: 'how many of this block you make',
    method: 'triangles and geese that you make together, or rows of equal patches from strips',
    sheet: SHEET_HINT,
  },
  options: {
    method: {
      'two-one': '2 triangles, 1 goose',
      'two-four': '2 triangles, 4 geese',
      'eight-one': '8 triangles, 1 goose',
      'eight-four': '8 triangles, 4 geese',
      strips: 'equal patches from strips',
    },
  },
  entries: {},
  sentences: {
    ...planned,
    ...onSheets,

    // The chart.
    emptyChart: 'The chart is empty. Write rows of fabric letters, like A B A; B A B; A B A.',
    inCell: ({ row, cell, says }, t) => `Row ${row}, patch ${cell}: ${t.say(says)}`,
    marksNeeded: 'A row with a size needs | between its patches, like B A B 2x1 | A.',
    tooManyCells: ({ most }) =>
      `A chart has at most ${most} cells each way. Draw the block in larger cells, like 12 by 12.`,
    tooManyFabrics: ({ most }) => `A chart has at most ${most} fabrics. Use fewer letters, like A to H.`,
    emptyCell: 'This patch has no letter. Write the letter of its fabric, like A.',
    notPatch: ({ text }, t) => `${t.quote(text)} is not a patch. Write it like ${PATCHES}.`,
    notSpan: ({ text }, t) => `${t.quote(text)} is not a number of cells. Write it like 2.`,
    outside: ({ row }) =>
      `This patch reaches down to row ${row}, but the chart ends before that. Write a smaller rowspan, like 1, or add rows.`,
    overlaps: 'This patch lies over one that comes down from the row above. Write a smaller colspan, like 1.',
    gap: ({ row, column }) =>
      `Row ${row} has no patch in column ${column}. Give all rows the same number of cells, like 3.`,
    halfNotSquare:
      'Half-square triangles need a square patch. Write A for one fabric, or let the patch cover as many columns as rows, like 2 by 2.',
    quarterNotSquare:
      'Quarter-square triangles need a square patch. Write A for one fabric, or let the patch cover as many columns as rows, like 2 by 2.',
    insideNotSquare:
      'A square in a square needs a square patch. Write A for one fabric, or let the patch cover as many columns as rows, like 2 by 2.',
    gooseNotTwoByOne:
      'A flying goose is twice as long as it is high. Let its patch cover two cells side by side, with colspan="2", or 2x1 behind its letters.',
    gooseWay: ({ text, ways }, t) =>
      `${text ? `${t.quote(text)} is not a way that this goose can fly` : 'Nothing says which way this goose flies'}. Write goose="${ways[0] ?? ''}" or goose="${ways[1] ?? ''}" on its cell, or the word behind its letters.`,
    patchTooSmall: ({ patch, mark }, t) =>
      `A patch would finish ${t.size(patch)}, too small to cut: the marks of the ruler are ${t.l(mark)} apart. Write a larger block, like ${t.usual({ in: '12 in', cm: '30 cm' })}.`,

    // What is cut.
    square: 'square',
    rectangle: 'rectangle',
    pairSquareTwo: 'square for half-square triangles, two at a time',
    pairSquareEight: 'square for half-square triangles, eight at a time',
    quarterTriangles: 'quarter-square triangles',
    gooseRectangle: 'rectangle for a flying goose',
    skyCorner: 'square to sew over a goose’s corner',
    gooseSquare: 'square for flying geese, four at a time',
    skySquare: 'sky square for flying geese, four at a time',
    middleSquare: 'middle square, on point',
    rowStrip: 'strip, to sew together and cut across',
    cornerTriangles: 'corner triangles round a square',

    // What is worth saying.
    unlikeSkies:
      'Geese with two different fabrics beside them are made one at a time: four at a time, half of them would come out mirrored.',
    halvesOtherWay: ({ way, fabrics }, t) => `${WAYS[way]}: ${needs(fabrics, t)}`,
    rowsOtherWay: ({ way, fabrics }, t) => `${ROWS[way]}: ${needs(fabrics, t)}`,
    notOfStrips:
      'This block is not made of rows of equal patches, or a row is longer than the cloth is wide. So we did not use strips.',
    geeseOtherWay: ({ way, fabrics }, t) => `${WAYS[way]}: ${needs(fabrics, t)}`,
    summary: ({ name, count, block, says }, t) =>
      `${name && `${name}: `}${t.many(count, BLOCKS)} of ${t.l(block)}.${count ? ` ${t.say(says)}` : ''}`,
    picture: ({ name, block, columns, rows }, t) =>
      `${name || 'The block'}, ${t.l(block)} finished: ${columns} by ${rows} cells.`,
    letter: ({ letter }) => letter,
    cellName: ({ row, cell }) => `Row ${row}, patch ${cell}`,
  },
};
