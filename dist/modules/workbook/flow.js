import { ownUnits } from '../measure/format.js';
import { isExact } from '../measure/exact.js';
import { Message } from '../measure/message.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { flowing } from './fabrics.js';
import { sayOfFlow } from './flow-sayings.js';

/** The order: first the part that makes the quilt from blocks, then those that make it larger, then the others. */
const place = ({ calculator }) => calculator.finishes ? Number('width' in calculator.fields) : 2;
/** Says that the list lacks cloth for the blocks: there is no cut list, or it is for other blocks. */
const cautionOf = ({ written, now }, lists) => {
    if (!now)
        return undefined;
    if (!lists[0])
        return sayOfFlow('noClothForBlocks');
    const follow = lists.every(({ followsBlock }) => followsBlock);
    const isSame = !written || (written.count === now.count && (follow || written.block.equals(now.block)));
    return isSame ? undefined : sayOfFlow('listForOtherBlocks', { now, written });
};
/** What flows to every part in the same way. */
const forAll = ({ width, length, seam, ...shared }, fabrics) => {
    const [wide, long, allowance] = [width, length, seam].map((raw) => flowing(raw, fabrics.style).value);
    const usualWidth = fabrics.widthOf('').width ?? COTTON_WIDTH[ownUnits(fabrics.style)];
    const size = { width: wide, length: long };
    return { size, values: { ...shared, seam: allowance, widths: fabrics.widths, usualWidth } };
};
/**
 * Lets sizes and settings flow through the parts, in one pass: nothing flows back. `give` gives a part its values, and returns what
 * the part makes of them.
 */
const flow = (source, parts, fabrics, give) => {
    const all = forAll(source, fabrics);
    const lists = parts.filter(({ isCutList }) => isCutList);
    let block;
    let { size } = all;
    let from = sayOfFlow('fromWorksheet');
    let caution;
    for (const part of [...parts].sort((a, b) => place(a) - place(b))) {
        const { calculator } = part;
        const letters = fabrics.lettersIn(part.fabric);
        const { fabricWidth, fabricWidths, from: clothFrom } = fabrics.widthsOf(letters);
        // Something that is bought by the piece is not added to other cloth.
        const shared = !calculator.byPiece?.(part.input);
        const cloth = { letters, fabricWidth, fabricWidths, shared };
        const values = { ...all.values, ...size, ...cloth, block, caution };
        // A part that takes no size does not change with it.
        const sizes = Object.keys(size).filter((key) => !(key in calculator.fields));
        for (const key of [...sizes, ...(calculator.own ?? [])])
            delete values[key];
        if (calculator.finishes || !block)
            delete values['block'];
        const { own: answer } = give(part, {
            values,
            from: {
                width: from,
                length: from,
                fabricWidth: clothFrom,
                block: sayOfFlow('fromPart', { part: 'top' }),
            },
        });
        const { blocks } = part;
        if (blocks)
            caution ??= cautionOf(blocks, lists);
        block ??= blocks?.now?.block;
        if (!calculator.finishes)
            continue;
        size = answer ? calculator.finishes(answer) : {};
        from = sayOfFlow('fromPart', { part: calculator.name });
    }
    return { size, caution };
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
