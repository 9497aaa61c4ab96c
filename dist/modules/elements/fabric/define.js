import { define } from '../../face/define.js';
import { QuiltFabric } from './fabric.js';

define('quilt-fabric', QuiltFabric);

export { QuiltFabric };
