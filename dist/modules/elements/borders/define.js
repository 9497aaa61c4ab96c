import { define } from '../../sheet/define.js';
import { QuiltBorders } from './borders.js';

define('quilt-borders', QuiltBorders);

export { QuiltBorders };
