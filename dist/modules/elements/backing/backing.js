import { drawBacking } from '../../drawing/backing.js';
import { reckonBacking, backingFields } from '../../reckon/backing.js';
import { lengthOf } from '../../drawing/picture.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';

const words = ({ panels, strip, seams, direction }) => `${panels} ${panels > 1 ? 'panels' : 'panel'}${strip ? ` and a strip pieced from ${strip.count}` : ''}, ${seams === 0 ? 'cloth' : 'seams'} ${direction === 'lengthwise' ? 'along the length' : 'across'}`;
const layouts = ({ layouts }, style) => ({
    caption: 'Ways to lay it out',
    head: ['Panels', 'Seams', 'Cloth', 'Buy'],
    rows: layouts.map((layout) => [
        words(layout),
        `${layout.seams}`,
        lengthOf(layout.fabric, style),
        layout.buy.text,
    ]),
});
/**
 * Cloth for a quilt's back: panels, seams, every layout that is possible, and what to buy.
 *
 * @tagname quilt-backing
 */
class QuiltBacking extends QuiltSheet {
    static { this.properties = propertiesOf(backingFields); }
    constructor() {
        super();
        this.calculator = {
            title: 'Backing',
            fields: backingFields,
            reckon: reckonBacking,
            own: ['seam'],
            draw: (result, style) => [drawBacking(result, style)],
            listings: (result, style) => [layouts(result, style)],
            instead: ({ layouts }) => layouts.filter(({ strip }) => strip).map(({ buy }) => ({ words: 'A pieced strip', buy })),
            takes: ({ fabric, cuts }, [letter = '']) => [{ fabric: letter, need: fabric, cuts, pieces: [] }],
        };
        this.oneWay = false;
        this.piecedStrip = false;
    }
}

export { QuiltBacking };
