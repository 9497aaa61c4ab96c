export { reckonBacking } from './reckon/backing.js';
export { reckonBatting } from './reckon/batting.js';
export { reckonBinding } from './reckon/binding.js';
export { reckonBorders } from './reckon/borders.js';
export { reckonCutting } from './reckon/cutting.js';
export { reckonTop } from './reckon/top.js';
export { reckonWorksheet } from './reckon/worksheet.js';
