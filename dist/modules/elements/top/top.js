import { drawTop } from '../../drawing/top.js';
import { lengthOf } from '../../drawing/picture.js';
import { reckonTop, topFields } from '../../reckon/top.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';
import { stripList } from '../cutting/strips.js';

/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
class QuiltTop extends QuiltSheet {
    constructor() {
        super(...arguments);
        this.calculator = {
            title: 'Quilt top',
            fields: topFields,
            reckon: reckonTop,
            headline: ({ finished }, style) => [
                'Finished',
                `${lengthOf(finished.width, style).replace(/ \w+$/, '')} × ${lengthOf(finished.length, style)}`,
            ],
            draw: (result, style) => [drawTop(result, style)],
            takes: ({ parts }, letters) => parts.map(({ part, fabric, cuts }, at) => ({
                title: part.replace(/^./, (first) => first.toUpperCase()),
                fabric: letters[at] ?? letters.at(-1) ?? '',
                need: fabric,
                cuts,
            })),
            listings: ({ parts, strips }, style) => {
                const apart = parts.map(({ part, strips }) => ({ fabric: part, strips }));
                const several = /\S[\s,]+\S/.test(this.fabric ?? '');
                const together = parts.length > 1 && !several ? [{ fabric: 'all from one cloth', strips }] : [];
                const cloth = {
                    caption: 'Cloth for it',
                    head: ['Part', 'Cloth', 'Buy'],
                    rows: parts.map(({ part, fabric, buy }) => [part, lengthOf(fabric, style), buy.text]),
                };
                return parts.length ? [cloth, stripList([...apart, ...together], style, 'Part')] : [];
            },
        };
    }
    static { this.properties = propertiesOf(topFields); }
}

export { QuiltTop };
