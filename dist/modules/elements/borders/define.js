import { define } from '../../face/define.js';
import { QuiltBorders } from './borders.js';

define('quilt-borders', QuiltBorders);

export { QuiltBorders };
