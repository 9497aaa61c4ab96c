import { define } from '../../face/define.js';
import { QuiltBatting } from './batting.js';

define('quilt-batting', QuiltBatting);

export { QuiltBatting };
