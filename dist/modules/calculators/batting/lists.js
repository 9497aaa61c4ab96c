import { sayInList } from '../../ledger/listing.js';
import { say } from './shape.js';

const bySize = (things, size) => [...things].sort((a, b) => size(a).compare(size(b)));
/** Every package, and every way to cut it from a roll. */
const lists = ({ packages, rolls }) => [
    {
        caption: say('packageList'),
        head: [say('packageHead'), say('sizeHead'), say('fitsHead')],
        rows: bySize(packages, ({ width, length }) => width.mul(length)).map((pack) => [
            pack.name,
            say('size', pack),
            say('fits', pack),
        ]),
    },
    {
        caption: say('rollList'),
        head: [say('rollHead'), say('lengthsHead'), sayInList('buyHead')],
        rows: bySize(rolls, ({ width }) => width).map((roll) => [
            roll.width,
            say('lengthsToCut', roll),
            roll.buy,
        ]),
    },
];

export { lists };
