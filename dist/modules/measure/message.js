import { Branded } from './brand.js';

/**
 * Something to say: a code, and the values that its sentence needs. `words/` makes the sentence, in the reader's language. No
 * code reads a sentence back.
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
 * Makes the messages of one set. If the code is not in the set, or a value is missing, it does not compile:
 * `const say = sayings<BackingSayings>(); say('seamsLeaveNothing', { seam, cloth })`.
 */
const sayings = () => (code, ...[values]) => new Message(code, values ?? NONE);
const NONE = {};

export { Message, isMessage, sayings };
