import { sayInList } from '../../ledger/listing.js';
import { say } from './shape.js';

/** Every layout that is possible. */
const lists = ({ layouts }) => [
    {
        caption: say('layouts'),
        head: [say('panelsHead'), say('seamsHead'), sayInList('clothHead'), sayInList('buyHead')],
        rows: layouts.map((layout) => [say('layout', layout), layout.seams, layout.fabric, layout.buy]),
    },
];

export { lists };
