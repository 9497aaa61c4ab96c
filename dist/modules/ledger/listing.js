import { sayings } from '../measure/message.js';

const sayInList = sayings();

export { sayInList };
