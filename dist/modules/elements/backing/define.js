import { define } from '../../sheet/define.js';
import { QuiltBacking } from './backing.js';

define('quilt-backing', QuiltBacking);

export { QuiltBacking };
