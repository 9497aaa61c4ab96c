import { define } from '../../sheet/define.js';
import { QuiltFabric } from './fabric.js';

define('quilt-fabric', QuiltFabric);

export { QuiltFabric };
