import { define } from '../../face/define.js';
import { QuiltBinding } from './binding.js';

define('quilt-binding', QuiltBinding);

export { QuiltBinding };
