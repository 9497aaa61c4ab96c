import { drawnSize, corner, inner, turning } from '../../ledger/picture.js';
import { say } from './shape.js';

/** The back from behind: its panels and seams, and the quilt within its overage. */
const draw = ({ layouts, need, used, summary }) => {
    const { panels = 1, strip, direction = 'lengthwise' } = layouts[0] ?? {};
    const { width, height } = drawnSize(need);
    const at = turning(direction === 'crosswise');
    const [reach, long] = at(width, height);
    const seam = used.seam.valueOf();
    const cloth = used.cloth.width.value.valueOf();
    const boxes = [];
    const lines = [];
    const sew = (fromAcross, fromAlong, toAcross, toAlong) => {
        lines.push({ is: 'seam', from: at(fromAcross, fromAlong), to: at(toAcross, toAlong) });
    };
    const { quilt } = used;
    const sides = drawnSize(quilt);
    /** The overage, the same all round. No words go there, because the line of the quilt would cross them. */
    const edge = (width - sides.width) / 2;
    const rectangle = (from, to, start, end) => {
        const [x, y] = at(from, start);
        const [width, height] = at(to - from, end - start);
        return { x, y, width, height };
    };
    const add = (from, to, label, start = 0, end = long) => {
        const room = rectangle(Math.max(from, edge), Math.min(to, reach - edge), Math.max(start, edge), Math.min(end, long - edge));
        boxes.push({ ...rectangle(from, to, start, end), is: 'cloth', label, room });
        if (from)
            sew(from, start, from, end);
        if (start)
            sew(from, start, to, start);
    };
    /** Where each panel begins after joining. Its seam allowances are turned under. */
    const start = (panel) => panel && panel * (cloth - 2 * seam) + seam;
    for (let panel = 0; panel < panels; panel += 1) {
        const end = panel < panels - 1 || strip ? start(panel + 1) : reach;
        add(start(panel), end, say('panelNumber', { number: panel + 1 }));
    }
    if (strip) {
        const last = strip.count - 1;
        for (let piece = 0; piece <= last; piece += 1)
            add(start(panels), reach, say('stripInPicture'), start(piece), piece < last ? start(piece + 1) : long);
    }
    boxes.push({ x: edge, y: edge, ...sides, is: 'quilt' });
    return [
        {
            title: say('picture', { summary }),
            width,
            height,
            boxes,
            lines,
            dimensions: [...corner(need), ...inner(edge, edge, quilt, 'quiltSide')],
        },
    ];
};

export { draw };
