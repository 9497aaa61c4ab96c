import { QuiltCutting } from './cutting.js';
export { QuiltCutting };
