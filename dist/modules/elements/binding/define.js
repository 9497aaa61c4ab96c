import { define } from '../../sheet/define.js';
import { QuiltBinding } from './binding.js';

define('quilt-binding', QuiltBinding);

export { QuiltBinding };
