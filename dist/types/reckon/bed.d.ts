import { type Exact } from '../measure/exact.js';
import type { battingFields } from './batting.js';
import type { Book } from './book.js';
import type { Size } from './shared.js';
/** The finished quilt and the ids of its rows: as it was given, or as it hangs over a bed. */
export declare const quiltOrBed: (book: Book<typeof battingFields>) => {
    quilt: Size<Exact>;
    rows: Size;
};
