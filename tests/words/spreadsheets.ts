import { backing } from '../../src/calculators/backing/backing.js';
import { batting } from '../../src/calculators/batting/batting.js';
import { binding } from '../../src/calculators/binding/binding.js';
import { borders } from '../../src/calculators/borders/borders.js';
import type { Calculator } from '../../src/calculators/calculator.js';
import { cutting } from '../../src/calculators/cutting/cutting.js';
import { top } from '../../src/calculators/top/top.js';
import type { Answer } from '../../src/ledger/answer.js';
import type { Reckoning } from '../../src/ledger/ledger.js';
import { reckonPlain } from '../../src/workbook/plain.js';
import { worksheetFields } from '../../src/workbook/shape.js';
import type { OwnWords } from '../../src/words/common.js';
import { backing as backingWords } from '../../src/words/en/backing.js';
import { batting as battingWords } from '../../src/words/en/batting.js';
import { binding as bindingWords } from '../../src/words/en/binding.js';
import { borders as bordersWords } from '../../src/words/en/borders.js';
import { cutting as cuttingWords } from '../../src/words/en/cutting.js';
import { inEnglish } from '../../src/words/en/english.js';
import { top as topWords } from '../../src/words/en/top.js';
import { worksheet as worksheetWords } from '../../src/words/en/worksheet.js';
import type { SheetCell } from '../../src/words/sheet-rows.js';
import { spreadsheetOf } from '../../src/words/spreadsheet.js';
import { Teller } from '../../src/words/teller.js';

export type Given = Record<string, unknown>;

interface Kind {
  fields: Calculator['fields'];
  reckon: (input: Given) => Reckoning<Answer>;
  words: OwnWords;
}

/** All that reckon, with their words. */
export const KINDS: Record<string, Kind> = {
  backing: { ...backing, words: backingWords },
  binding: { ...binding, words: bindingWords },
  borders: { ...borders, words: bordersWords },
  batting: { ...batting, words: battingWords },
  top: { ...top, words: topWords },
  cutting: { ...cutting, words: cuttingWords },
  worksheet: { fields: worksheetFields, reckon: reckonPlain, words: worksheetWords },
};

export const kindOf = (name: string): Kind => {
  const kind = KINDS[name];
  if (!kind) throw new Error(`There is no ${name}.`);
  return kind;
};

/** What comes of an input, and its spreadsheet. */
export const spread = (
  name: string,
  input: Given,
): { reckoning: Reckoning<Answer>; cells: SheetCell[][] } => {
  const { fields, reckon, words } = kindOf(name);
  const reckoning = reckon(input);
  const t = new Teller(inEnglish(words), reckoning.style, reckoning.lang);
  return { reckoning, cells: spreadsheetOf(reckoning, fields, t) };
};
