import { sayings } from '../measure/message.js';

const sayInSpreadsheet = sayings();

export { sayInSpreadsheet };
