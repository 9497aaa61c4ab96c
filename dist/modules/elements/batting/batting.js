import { drawBatting } from '../../drawing/batting.js';
import { sizeOf, lengthOf } from '../../drawing/picture.js';
import { exact } from '../../measure/exact.js';
import { reckonBatting, battingFields } from '../../reckon/batting.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';

const bySize = (things, size) => [...things].sort((a, b) => size(a).compare(size(b)));
const offers = ({ packages, rolls }, style) => [
    {
        caption: 'Packages',
        head: ['Package', 'Size', 'Does it do?'],
        rows: bySize(packages, ({ width, length }) => exact(width).mul(exact(length))).map((pack) => [
            pack.name,
            sizeOf(pack, style),
            `${pack.fits ? 'yes' : 'too small'}${pack.priceText ? `, ${pack.priceText}` : ''}`,
        ]),
    },
    {
        caption: 'From the roll',
        head: ['Roll', 'Lengths', 'Buy'],
        rows: bySize(rolls, ({ width }) => exact(width)).map(({ width, lengths, length, buy }) => [
            lengthOf(width, style),
            `${lengths > 1 ? `${lengths}, butted, each ` : ''}${lengthOf(length, style)}`,
            buy.text,
        ]),
    },
];
/**
 * Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed.
 *
 * @tagname quilt-batting
 */
class QuiltBatting extends QuiltSheet {
    constructor() {
        super(...arguments);
        this.calculator = {
            title: 'Batting',
            fields: battingFields,
            reckon: reckonBatting,
            draw: (result, style) => [drawBatting(result, style)],
            listings: offers,
            own: ['shrinkage'],
            byPiece: () => true,
            takes: ({ fabric: need, cuts, buy, cost }, [fabric = '']) => [
                { fabric, need, cuts, item: buy.text, cost: cost?.amount },
            ],
        };
    }
    static { this.properties = propertiesOf(battingFields); }
}

export { QuiltBatting };
