import { sayings } from '../measure/message.js';

const sayOfFlow = sayings();

export { sayOfFlow };
