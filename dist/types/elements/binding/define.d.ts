import { QuiltBinding } from './binding.js';
export { QuiltBinding };
