import { QuiltBatting } from './batting.js';
export { QuiltBatting };
