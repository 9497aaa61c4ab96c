import { sayings } from '../../measure/message.js';

const say = sayings();

export { say };
