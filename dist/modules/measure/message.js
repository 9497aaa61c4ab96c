import { Branded } from './brand.js';

/**
 * Something to say, as a code and the values it is about. The sentence is made in `words/`, in the reader's language, and no
 * code reads one back.
 */
class Message extends Branded {
    get brand() {
        return 'message';
    }
    constructor(code, values) {
        super();
        this.code = code;
        this.values = values;
    }
}
const isMessage = (value) => value instanceof Message;
/**
 * Makes the messages of one set. A code that is not in the set, or a value that its sentence lacks, does not compile:
 * `const say = sayings<BackingSayings>(); say('seamsLeaveNothing', { seam, cloth })`.
 */
const sayings = () => (code, ...[values]) => new Message(code, values ?? NONE);
const NONE = {};

export { Message, isMessage, sayings };
