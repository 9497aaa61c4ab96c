import { inchesIn } from './picture.js';
import { sidesOf, givenSize, corner, inner, turning } from './sides.js';

/** The back from behind: its panels and seams, and the quilt within its overage. */
const drawBacking = (result, style) => {
    const { panels, strip, direction } = result.layouts[0];
    const { width, height } = sidesOf(result.need);
    const at = turning(direction === 'crosswise');
    const [reach, long] = at(width, height);
    const seam = inchesIn(result, 'seam');
    const cloth = inchesIn(result, 'washedWidth') || inchesIn(result, 'fabricWidth');
    const boxes = [];
    const lines = [];
    const sew = (fromAcross, fromAlong, toAcross, toAlong) => {
        lines.push({ is: 'seam', from: at(fromAcross, fromAlong), to: at(toAcross, toAlong) });
    };
    const add = (from, to, label) => {
        const [x, y] = at(from, 0);
        const [width, height] = at(to - from, long);
        boxes.push({ x, y, width, height, is: 'cloth', label });
        if (from)
            sew(from, 0, from, long);
    };
    /** Where each panel begins once joined: its seam allowances are turned under. */
    const start = (panel) => panel && panel * (cloth - 2 * seam) + seam;
    for (let panel = 0; panel < panels; panel += 1)
        add(start(panel), panel < panels - 1 || strip ? start(panel + 1) : reach, `panel ${panel + 1}`);
    if (strip) {
        add(start(panels), reach, 'strip');
        for (let piece = 1; piece < strip.count; piece += 1)
            sew(start(panels), start(piece), reach, start(piece));
    }
    const quilt = givenSize(result);
    const sides = sidesOf(quilt);
    const [x, y] = [(width - sides.width) / 2, (height - sides.height) / 2];
    boxes.push({ x, y, ...sides, is: 'quilt' });
    return {
        title: `${result.summary} The broken line is the quilt.`,
        width,
        height,
        boxes,
        lines,
        dimensions: [...corner(result.need, style), ...inner(x, y, quilt, style, 'quilt')],
    };
};

export { drawBacking };
