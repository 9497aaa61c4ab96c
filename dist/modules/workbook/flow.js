import { ownUnits } from '../measure/format.js';
import { isExact } from '../measure/exact.js';
import { Message } from '../measure/message.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { flowing } from './fabrics.js';
import { sayOfFlow } from './flow-sayings.js';
import { isPlaced, unevenOf, sharesOf, flowingCount } from './places.js';

/** The order: first the part that makes the quilt from blocks, then those that make it larger, then the others. */
const place = ({ calculator }) => calculator.finishes ? Number('width' in calculator.fields) : 2;
/** Whether a list of what to cut is for other blocks than the top has now. A block has its own number, so only its size counts. */
const isOutgrown = ({ placed }, { written, now }) => {
    if (!written || !now || (placed && !placed.block))
        return false;
    return !written.block.equals(now.block) || (!placed && written.count !== now.count);
};
/** Says that the list lacks cloth for the blocks: there is no cut list, or it is for other blocks. */
const cautionOf = ({ written, now }, lists, outgrown) => {
    if (!now)
        return undefined;
    if (!lists)
        return sayOfFlow('noClothForBlocks');
    return written && outgrown ? sayOfFlow('listForOtherBlocks', { now, written }) : undefined;
};
const ofTop = (blocks, parts) => {
    const lists = parts.filter(({ isCutList, placed }) => isCutList && !(placed && !isPlaced(placed, blocks)));
    const outgrown = lists.filter((list) => isOutgrown(list, blocks));
    const placed = lists.flatMap(({ placed }) => placed ?? []);
    return {
        blocks,
        placed,
        counted: lists
            .filter(({ placed }) => placed)
            .map((part, at) => ({ part, count: sharesOf(blocks.now?.count ?? 0, placed)[at] })),
        outgrown,
        caution: cautionOf(blocks, lists.length, outgrown.length),
        uneven: blocks.now && unevenOf(blocks.now.count, placed),
    };
};
/** What a top gives a part: the size of its blocks, and how many of this one there are. */
const fromTop = ({ blocks: { now }, placed, caution, outgrown }, part) => ({
    caution: outgrown.includes(part) ? caution : undefined,
    ...(now && !part.calculator.finishes && { block: now.block }),
    ...(now && part.placed && { count: flowingCount(now.count, placed, part.placed) }),
});
/** What flows to every part in the same way. */
const forAll = ({ width, length, seam, ...shared }, fabrics) => {
    const [wide, long, allowance] = [width, length, seam].map((raw) => flowing(raw, fabrics.style).value);
    const usualWidth = fabrics.widthOf('').width ?? COTTON_WIDTH[ownUnits(fabrics.style)];
    const size = { width: wide, length: long };
    return {
        size,
        values: {
            ...shared,
            seam: allowance,
            widths: fabrics.widths,
            sheets: fabrics.sheets,
            usualWidth,
            swatches: fabrics.swatches,
            names: fabrics.names,
        },
    };
};
/**
 * Lets sizes and settings flow through the parts, in one pass: nothing flows back. `give` gives a part its values, and returns what
 * the part makes of them.
 */
const flow = (source, parts, fabrics, give) => {
    const all = forAll(source, fabrics);
    let top;
    let { size } = all;
    let from = sayOfFlow('fromWorksheet');
    for (const part of [...parts].sort((a, b) => place(a) - place(b))) {
        const { calculator } = part;
        const letters = fabrics.lettersIn(part.fabric);
        const { fabricWidth, fabricWidths, from: clothFrom } = fabrics.widthsOf(letters);
        // Something that is bought by the piece is not added to other cloth.
        const shared = !calculator.byPiece?.(part.input);
        const apart = new Set(letters).size > 1;
        const cloth = { letters, fabricWidth, fabricWidths, shared, apart };
        const values = { ...all.values, ...size, ...cloth, ...(top && fromTop(top, part)) };
        // A part that takes no size does not change with it.
        const sizes = Object.keys(size).filter((key) => !(key in calculator.fields));
        for (const key of [...sizes, ...(calculator.own ?? [])])
            delete values[key];
        const fromPart = (part) => sayOfFlow('fromPart', { part });
        const { own: answer } = give(part, {
            values,
            from: {
                width: from,
                length: from,
                fabricWidth: clothFrom,
                block: fromPart('top'),
                count: fromPart('top'),
            },
        });
        const { blocks } = part;
        if (blocks?.now)
            top ??= ofTop(blocks, parts);
        if (!calculator.finishes)
            continue;
        size = answer ? calculator.finishes(answer) : {};
        from = fromPart(calculator.name);
    }
    const { caution, uneven, outgrown = [], counted = [] } = top ?? {};
    return { size, caution, uneven, outgrown, counted };
};
/** Whether two values that flow are equal, at any depth: exact numbers and messages too. */
const isSame = (a, b) => {
    // Most values are the same object, such as the words of a language. Then there is no need to look inside.
    if (Object.is(a, b))
        return true;
    if (isExact(a) && isExact(b))
        return a.equals(b);
    if (typeof a !== 'object' || typeof b !== 'object' || !a || !b)
        return false;
    if (a instanceof Message && b instanceof Message && a.code !== b.code)
        return false;
    const [one, other] = [a, b];
    const keys = Object.keys(one);
    return keys.length === Object.keys(other).length && keys.every((key) => isSame(one[key], other[key]));
};

export { flow, isSame };
