import { QuiltBacking } from './backing.js';
export { QuiltBacking };
