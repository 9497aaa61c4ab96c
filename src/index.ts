export { QuiltBacking } from './elements/backing/define.js';
