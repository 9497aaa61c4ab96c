import { wholeDown, ZERO } from '../measure/exact.js';

/**
 * Cloth that is enough whatever a plan comes to: strips of one kind of piece each, one below the other. It is known at once,
 * and says something while a plan that may take less is made. Undefined where a piece does not fit on the cloth.
 */
const roughly = (cuts, cloth) => {
    let length = ZERO;
    const strips = [];
    for (const { piece, count, ...size } of cuts) {
        const [short, long] = size.width.gt(size.length) ? [size.length, size.width] : [size.width, size.length];
        // The long side lies across the cloth where it fits.
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
