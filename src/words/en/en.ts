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

/** Every word in English. An element takes its own part of these; a kind of English starts from all of them. */
export const en: Language = {
  common,
  face,
  spreadsheet,
  calculators: { backing, batting, binding, block, borders, cutting, sleeve, top, worksheet },
};
