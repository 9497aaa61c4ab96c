import { isExact } from '../measure/exact.js';
import { Message } from '../measure/message.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { flowing } from './fabrics.js';
import { sayOfFlow } from './flow-sayings.js';

/** A part that makes the quilt from blocks comes first, then what makes it larger; the others take what comes of it. */
const place = ({ calculator }) => calculator.finishes ? Number('width' in calculator.fields) : 2;
/** That the list lacks cloth for the blocks: there is none, or it was written for other blocks. */
const cautionOf = ({ written, now }, hasList) => {
    if (!now)
        return undefined;
    if (!hasList)
        return sayOfFlow('noClothForBlocks');
    const isSame = !written || (written.count === now.count && written.block.equals(now.block));
    return isSame ? undefined : sayOfFlow('listForOtherBlocks', { now, written });
};
/** What flows to every part alike. */
const forAll = ({ width, length, seam, ...shared }, fabrics) => {
    const [wide, long, allowance] = [width, length, seam].map((raw) => flowing(raw, fabrics.style).value);
    const usualWidth = fabrics.widthOf('').width ?? COTTON_WIDTH[fabrics.style.units];
    const size = { width: wide, length: long };
    return { size, values: { ...shared, seam: allowance, widths: fabrics.widths, usualWidth } };
};
/**
 * Lets sizes and settings flow once through the parts. One pass: nothing flows back. `give` hands a part what flows to it, and
 * gives back what it has reckoned of that.
 */
const flow = (source, parts, fabrics, give) => {
    const all = forAll(source, fabrics);
    const hasList = parts.some(({ isCutList }) => isCutList);
    let { size } = all;
    let from = sayOfFlow('fromWorksheet');
    let caution;
    for (const part of [...parts].sort((a, b) => place(a) - place(b))) {
        const { calculator } = part;
        const letters = fabrics.lettersIn(part.fabric);
        const { fabricWidth, fabricWidths, from: clothFrom } = fabrics.widthsOf(letters);
        // What is bought by the piece is bought by itself.
        const shared = !calculator.byPiece?.(part.input);
        const cloth = { letters, fabricWidth, fabricWidths, shared };
        const values = { ...all.values, ...size, ...cloth, caution };
        for (const key of calculator.own ?? [])
            delete values[key];
        const { own: answer } = give(part, {
            values,
            from: { width: from, length: from, fabricWidth: clothFrom },
        });
        if (part.blocks)
            caution ??= cautionOf(part.blocks, hasList);
        if (!calculator.finishes)
            continue;
        size = answer ? calculator.finishes(answer) : {};
        from = sayOfFlow('fromPart', { part: calculator.name });
    }
    return { size, caution };
};
/** Whether two values that flow are the same, however deep: exact numbers and messages too. */
const isSame = (a, b) => {
    // Most of what is compared is one and the same thing, such as a language's words.
    if (Object.is(a, b))
        return true;
    if (isExact(a) && isExact(b))
        return a.equals(b);
    if (typeof a !== 'object' || typeof b !== 'object' || !a || !b)
        return false;
    if (a instanceof Message && b instanceof Message && a.code !== b.code)
        return false;
    const [keys, others] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
    return keys.size === others.size && [...keys].every(([key, value]) => isSame(value, others.get(key)));
};

export { flow, isSame };
