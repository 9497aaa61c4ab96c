import { QuiltFabric } from './fabric.js';
export { QuiltFabric };
