import { drawBorders } from '../../drawing/borders.js';
import { lengthOf } from '../../drawing/picture.js';
import { reckonBorders, bordersFields } from '../../reckon/borders.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';

const PLAN_WORDS = {
    joined: 'across, all joined into one and cut up',
    separate: 'across, each border cut on its own',
    along: 'along the cloth, without joins',
};
const plans = ({ borders }, style) => ({
    caption: 'Ways to cut the strips',
    head: ['Border', 'Strips', 'Joins', 'Cloth'],
    rows: borders.flatMap(({ plans }, at) => plans.map(({ plan, strips, joins, fabric }) => [
        `${at + 1}: ${PLAN_WORDS[plan]}`,
        `${strips}`,
        `${joins}`,
        lengthOf(fabric, style),
    ])),
});
const strips = ({ working }) => ({
    caption: 'Strips for the borders',
    toCut: 'on paper',
    rows: working.filter(({ id }) => /\dStrips$/.test(id)).map(({ label, value, how }) => [label, value, how]),
});
/** A border's cloth: whole strips across it, or its pieces along it; strips of two widths lie as the border says itself. */
const takeOf = ({ plan, strips, fabric, cloth }, result, letter, at) => {
    const cuts = result.cuts.filter(({ piece }) => piece.startsWith(`border ${at + 1},`));
    const own = cuts.map((cut) => ({ ...cut, turn: false }));
    const alike = new Set(own.map(({ width }) => width)).size === 1;
    const across = { width: cloth.width, length: own[0].width, count: strips, turn: false };
    return {
        ...cloth,
        title: `Border ${at + 1}`,
        fabric: letter,
        need: fabric,
        cuts,
        pieces: plan === 'along' ? own : alike ? [across] : [],
    };
};
/**
 * Borders round a quilt top: cut lengths, strips, cloth, and the finished size.
 *
 * @tagname quilt-borders
 */
class QuiltBorders extends QuiltSheet {
    constructor() {
        super(...arguments);
        this.calculator = {
            title: 'Borders',
            fields: bordersFields,
            reckon: reckonBorders,
            finishes: 'borders',
            draw: (result, style) => [drawBorders(result, style)],
            listings: (result, style) => [plans(result, style), strips(result)],
            takes: (result, letters) => result.borders.map((border, at) => takeOf(border, result, letters[at] ?? letters.at(-1) ?? '', at)),
        };
    }
    static { this.properties = propertiesOf(bordersFields); }
}

export { QuiltBorders };
