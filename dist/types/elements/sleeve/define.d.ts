import { QuiltSleeve } from './sleeve.js';
export { QuiltSleeve };
