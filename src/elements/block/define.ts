import { define } from '../../face/define.js';
import { QuiltBlock } from './block.js';

define('quilt-block', QuiltBlock);

export { QuiltBlock };
