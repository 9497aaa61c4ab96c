import { define } from '../../face/define.js';
import { QuiltSleeve } from './sleeve.js';

define('quilt-sleeve', QuiltSleeve);

export { QuiltSleeve };
