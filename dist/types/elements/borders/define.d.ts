import { QuiltBorders } from './borders.js';
export { QuiltBorders };
