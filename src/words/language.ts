import type { CalculatorName } from '../calculators/calculator.js';
import type { CommonWords, OwnWords } from './common.js';
import type { backing } from './en/backing.js';
import type { batting } from './en/batting.js';
import type { binding } from './en/binding.js';
import type { block } from './en/block.js';
import type { borders } from './en/borders.js';
import type { cutting } from './en/cutting.js';
import type { sleeve } from './en/sleeve.js';
import type { top } from './en/top.js';
import type { worksheet } from './en/worksheet.js';
import type { FaceSayings } from './face-sayings.js';
import type { SpreadsheetSayings } from './spreadsheet-sayings.js';
import type { Sentences } from './vocabulary.js';

/** The words of every calculator. */
export interface CalculatorsWords extends Record<CalculatorName, OwnWords> {
  backing: typeof backing;
  batting: typeof batting;
  binding: typeof binding;
  block: typeof block;
  borders: typeof borders;
  cutting: typeof cutting;
  sleeve: typeof sleeve;
  top: typeof top;
  worksheet: typeof worksheet;
}

/** Every word that a person reads, in one language. A word that is missing does not compile. */
export interface Language {
  common: CommonWords;
  face: Sentences<FaceSayings>;
  spreadsheet: Sentences<SpreadsheetSayings>;
  calculators: CalculatorsWords;
}
