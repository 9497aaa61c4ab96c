import { sayings } from '../measure/message.js';

const sayInFace = sayings();

export { sayInFace };
