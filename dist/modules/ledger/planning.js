import { sayings } from '../measure/message.js';

const sayOfPlan = sayings();
/** Whether this is said of a layout that is not ready yet. */
const isPlanning = ({ code }) => code === 'planning';

export { isPlanning, sayOfPlan };
