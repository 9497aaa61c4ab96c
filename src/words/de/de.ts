import type { Language } from '../language.js';
import { backing } from './backing.js';
import { batting } from './batting.js';
import { binding } from './binding.js';
import { block } from './block.js';
import { borders } from './borders.js';
import { common } from './common.js';
import { cutting } from './cutting.js';
import { face } from './face.js';
import { sleeve } from './sleeve.js';
import { spreadsheet } from './spreadsheet.js';
import { top } from './top.js';
import { worksheet } from './worksheet.js';

/** Every word in German. The trade's words, such as Zwischenstreifen and Ecksteine, are from memory and have no source. */
export const de: Language = {
  common,
  face,
  spreadsheet,
  calculators: { backing, batting, binding, block, borders, cutting, sleeve, top, worksheet },
};
