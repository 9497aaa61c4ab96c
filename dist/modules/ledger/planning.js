import { sayings } from '../measure/message.js';

const sayOfPlan = sayings();
/** Whether a message says that a layout is not ready yet. */
const isPlanning = ({ code }) => code === 'planning';

export { isPlanning, sayOfPlan };
