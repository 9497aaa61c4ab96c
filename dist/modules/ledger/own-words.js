import { sayings } from '../measure/message.js';

const say = sayings();
const ownWords = (text) => say('ownWords', { text });

export { ownWords };
