import { define } from '../../sheet/define.js';
import { QuiltTop } from './top.js';

define('quilt-top', QuiltTop);

export { QuiltTop };
