import { exact, wholeDown, ZERO } from '../measure/exact.js';
import { mixed } from '../measure/format.js';

/**
 * Cloth that is enough whatever a plan comes to: strips of one kind of piece each, one below the other. It is known at once,
 * and says something while a plan that may take less is made. Undefined where a piece does not fit on the cloth.
 */
const roughly = (cuts, cloth) => {
    let length = ZERO;
    const strips = [];
    for (const { piece, count, ...size } of cuts) {
        const sides = [exact(size.width), exact(size.length)].sort((a, b) => a.compare(b));
        // The long side lies across the cloth where it fits.
        const [height, across] = sides[1].lte(cloth) ? sides : sides.reverse();
        const each = wholeDown(cloth.div(across));
        if (!each)
            return undefined;
        const whole = Math.floor(count / each);
        const rest = count - whole * each;
        const add = (times, gives) => {
            if (!times || !gives)
                return;
            length = length.add(height.mul(times));
            strips.push({ count: times, height: mixed(height), gives: [{ piece, count: gives }] });
        };
        add(whole, each);
        add(1, rest);
    }
    return { length, strips };
};

export { roughly };
