import { define } from '../../face/define.js';
import { QuiltTop } from './top.js';

define('quilt-top', QuiltTop);

export { QuiltTop };
