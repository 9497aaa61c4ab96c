import { define } from '../../face/define.js';
import { QuiltCutting } from './cutting.js';

define('quilt-cutting', QuiltCutting);

export { QuiltCutting };
