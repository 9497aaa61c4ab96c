import { equals } from '../teller.js';
import { bed } from './bed.js';

const BLOCKS = { one: 'block', other: 'blocks' };
const PARTS = {
    sashing: 'sashing',
    cornerstones: 'cornerstones',
    triangles: 'setting triangles',
};
const TITLES = {
    sashing: 'Sashing',
    cornerstones: 'Cornerstones',
    triangles: 'Setting triangles',
};
/** `3 in wider`, or nothing if there is no difference. */
const differs = (over, [more, less], t) => over.equals(0) ? '' : `${t.l(over.abs())} ${over.gt(0) ? more : less}`;
/** The border that would make it exactly as large as wanted, if it is too small. */
const closing = ({ side, end }, t) => {
    if (side.equals(end))
        return side.gt(0) ? `; a border of ${t.l(side)} all round would meet it` : '';
    const places = [
        side.gt(0) ? `${t.l(side)} at each side` : '',
        end.gt(0) ? `${t.l(end)} at top and bottom` : '',
    ].filter(Boolean);
    return `; a border of ${places.join(' and ')} would meet it`;
};
/** The quilt top's words in English. */
const top = {
    title: 'Quilt top',
    labels: {
        ...bed.labels,
        target: 'Wanted size',
        border: 'Borders on one side, all together',
        block: 'Block, finished',
        across: 'Blocks across',
        down: 'Blocks down',
        set: 'Set',
        sashing: 'Sashing, finished',
        cornerstones: 'Cornerstones',
        frame: 'Sashing round the outside',
        seam: 'Seam allowance',
        blocks: 'Blocks in all',
        finishedWidth: 'Top width, finished',
        finishedLength: 'Top length, finished',
        unfinished: 'Before you sew on borders',
        sideSquare: 'Square for four side triangles',
        cornerSquare: 'Square for two corner triangles',
        sideTriangles: 'Side triangles',
        sashingJoined: 'Sashing, long strips joined',
        sashingWhole: 'Sashing, cut along the cloth without joins',
    },
    hints: {
        ...bed.hints,
        target: 'with its borders; we then show the numbers of blocks that come closest',
        border: 'those that you sew on later',
        sashing: '0 for none',
    },
    options: { ...bed.options, set: { straight: 'straight', 'on-point': 'on point' } },
    entries: {},
    sentences: {
        ...bed.sentences,
        // Blocks for a size.
        targetNotUsed: 'The blocks are for the bed. We do not use the wanted size that you gave.',
        blocksForSize: 'Blocks for this size',
        noBlocksForSize: 'Even 100 blocks each way do not reach this size. Write a larger block, or a smaller wanted size.',
        choiceHead: 'Blocks',
        finishedHead: 'Finished, with borders',
        differenceHead: 'Beside the wanted size',
        blocksHead: 'In all',
        takeBlocks: ({ across, down }) => `Take ${across} × ${down}`,
        difference: ({ over, border }, t) => {
            const sides = [
                differs(over.width, ['wider', 'narrower'], t),
                differs(over.length, ['longer', 'shorter'], t),
            ].filter(Boolean);
            return (sides.join(', ') || 'exactly as wanted') + closing(border, t);
        },
        needsCornerstones: 'On point, sashing needs cornerstones here. Tick cornerstones, or write 0 for the sashing.',
        runsRound: 'On point, sashing runs round every block, on the outside too.',
        unfinishedSize: ({ size }, t) => t.size(size),
        moreEachWay: ({ allowance }, t) => `${t.l(allowance)} more each way`,
        upToMark: ({ size }, t) => `${t.formula(size)}, up to the mark`,
        stripsAcross: ({ need }, t) => `strips across the cloth: ${equals(t.formula(need), t.l(need))}`,
        onlyBlocks: 'nothing to cut but the blocks',
        ifAllFromOne: 'Cloth, if all from one',
        littleTooLong: ({ length, over, saves }, t) => `The sashing of ${t.l(length)} is ${t.l(over)} longer than the cloth is wide. If it were ${t.l(over)} shorter, it would need no join${saves.gt(0) ? ` and ${t.l(saves)} less cloth` : ''}.`,
        mayTakeLess: 'The layout is being planned: it may take less cloth.',
        // What is cut.
        sash: 'sashing',
        sashBetweenBlocks: 'sashing between blocks',
        sashBetweenRows: 'sashing between rows',
        sashBetweenRowsInOne: 'long sashing between rows',
        cornerstone: 'cornerstone',
        wholeToJoin: ({ piece, length }, t) => `${t.say(piece)}: part as wide as the cloth (sew the parts together to ${t.l(length)})`,
        endToJoin: ({ piece, length }, t) => `${t.say(piece)}: end part (sew the parts together to ${t.l(length)})`,
        squareForSides: 'square, cut in four for side triangles',
        squareForCorners: 'square, cut in two for corner triangles',
        part: ({ kind }) => PARTS[kind],
        partTitle: ({ kind }) => TITLES[kind],
        allParts: 'all',
        // The answer.
        summary: ({ layout, finished, parts, areOne, buy }, t) => {
            const { count, block, onPoint, across, down, sashing } = layout;
            const set = onPoint ? 'on point' : `${across} by ${down}`;
            const sashed = sashing.gt(0) ? `, with ${t.l(sashing)} sashing` : '';
            const takes = parts.map((part) => t.say(part)).join(' and ') + (areOne ? ' from one cloth' : '');
            const bought = buy ? ` For ${takes} buy ${t.bought(buy)}.` : '';
            return `${t.many(count, BLOCKS)} of ${t.l(block)}, ${set}${sashed}: the top finishes ${t.size(finished)}.${bought}`;
        },
        finished: 'Finished',
        finishedSize: ({ size }, t) => t.size(size),
        // The lists and the drawing.
        clothApart: 'Cloth, if each part has a fabric of its own',
        stripsApart: 'Strips, if each part has a fabric of its own',
        stripsTogether: 'Strips, all from one cloth',
        partHead: 'Part',
        picture: ({ summary }, t) => `The top: ${t.say(summary)}`,
    },
};

export { top };
