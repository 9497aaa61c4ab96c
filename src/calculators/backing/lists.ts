import { sayInList, type Listing } from '../../ledger/listing.js';
import { say, type BackingAnswer } from './shape.js';

/** Every layout that is possible. */
export const lists = ({ layouts }: BackingAnswer): Listing[] => [
  {
    caption: say('layouts'),
    head: [say('panelsHead'), say('seamsHead'), sayInList('clothHead'), sayInList('buyHead')],
    rows: layouts.map((layout) => [say('layout', layout), layout.seams, layout.fabric, layout.buy]),
  },
];
