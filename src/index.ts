export { QuiltBacking } from './elements/backing/define.js';
export { QuiltBatting } from './elements/batting/define.js';
export { QuiltBinding } from './elements/binding/define.js';
export { QuiltBorders } from './elements/borders/define.js';
