import { define } from '../../sheet/define.js';
import { QuiltBatting } from './batting.js';

define('quilt-batting', QuiltBatting);

export { QuiltBatting };
