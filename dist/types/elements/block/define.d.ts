import { QuiltBlock } from './block.js';
export { QuiltBlock };
