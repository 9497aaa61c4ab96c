import { QuiltTop } from './top.js';
export { QuiltTop };
