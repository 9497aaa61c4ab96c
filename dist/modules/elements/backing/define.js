import { define } from '../../face/define.js';
import { QuiltBacking } from './backing.js';

define('quilt-backing', QuiltBacking);

export { QuiltBacking };
