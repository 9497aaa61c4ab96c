export { QuiltBacking } from './elements/backing/define.js';
export { QuiltBatting } from './elements/batting/define.js';
export { QuiltBinding } from './elements/binding/define.js';
export { QuiltBorders } from './elements/borders/define.js';
export { QuiltCutting } from './elements/cutting/define.js';
export { QuiltTop } from './elements/top/define.js';
export { QuiltFabric } from './elements/fabric/define.js';
export { QuiltWorksheet } from './elements/worksheet/define.js';
