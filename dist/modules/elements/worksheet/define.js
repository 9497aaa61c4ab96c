import { define } from '../../face/define.js';
import { QuiltWorksheet } from './worksheet.js';

define('quilt-worksheet', QuiltWorksheet);

export { QuiltWorksheet };
