import { Branded } from '../measure/brand.js';
import { sayings } from '../measure/message.js';

/** A cell in which the reader writes. */
class Entry extends Branded {
    get brand() {
        return 'entry';
    }
    constructor(
    /** What it is about. */
    key, text, 
    /** Its name. */
    called) {
        super();
        this.key = key;
        this.text = text;
        this.called = called;
    }
}
const sayInList = sayings();

export { Entry, sayInList };
