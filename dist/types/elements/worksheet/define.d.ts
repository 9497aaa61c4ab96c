import { QuiltWorksheet } from './worksheet.js';
export { QuiltWorksheet };
