import { wholeDown, ZERO } from '../measure/exact.js';

/**
 * Cloth that is always enough: a strip holds only one kind of piece, and the strips lie below each other. We know it at once, so the
 * page can show it while it makes a plan that may take less. Undefined if a piece does not fit on the cloth.
 */
const roughly = (cuts, cloth) => {
    let length = ZERO;
    const strips = [];
    for (const { piece, count, ...size } of cuts) {
        const [short, long] = size.width.gt(size.length) ? [size.length, size.width] : [size.width, size.length];
        // The long side lies across the cloth if it fits.
        const [height, across] = long.lte(cloth) ? [short, long] : [long, short];
        const each = wholeDown(cloth.div(across));
        if (!each)
            return undefined;
        const whole = Math.floor(count / each);
        const add = (times, gives) => {
            if (!times || !gives)
                return;
            length = length.add(height.mul(times));
            strips.push({ count: times, height, gives: [{ piece, count: gives }] });
        };
        add(whole, each);
        add(1, count - whole * each);
    }
    return { length, strips };
};

export { roughly };
