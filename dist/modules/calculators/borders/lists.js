import { sayInList } from '../../ledger/listing.js';
import { say } from './shape.js';

/** Every plan for each border, with its strips. */
const lists = ({ used: { borders } }) => [
    {
        caption: say('plans'),
        head: [say('borderHead'), say('stripsHead'), say('joinsHead'), sayInList('clothHead')],
        rows: borders.flatMap(({ number, border }) => border.plans.map(({ plan, strips, joins, fabric }) => [
            say('planOf', { number, plan }),
            strips,
            joins,
            fabric,
        ])),
    },
    {
        caption: say('stripsForBorders'),
        toCut: 'paper',
        rows: borders.map(({ number, strips, how }) => [say('borderRow', { number, is: 'strips' }), strips, how]),
    },
];

export { lists };
