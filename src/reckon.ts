/** The arithmetic alone, without a page: plain input, plain result. */
import { backing } from './calculators/backing/backing.js';
import type { BackingAnswer, BackingInput, BackingLayout as Layout } from './calculators/backing/shape.js';
import { batting } from './calculators/batting/batting.js';
import type { BattingAnswer, BattingInput } from './calculators/batting/shape.js';
import { binding } from './calculators/binding/binding.js';
import type { BindingAnswer, BindingInput } from './calculators/binding/shape.js';
import { borders } from './calculators/borders/borders.js';
import type { BordersAnswer, BordersInput } from './calculators/borders/shape.js';
import { cutting } from './calculators/cutting/cutting.js';
import type { CuttingAnswer, CuttingInput } from './calculators/cutting/shape.js';
import type { TopAnswer, TopInput } from './calculators/top/shape.js';
import { top } from './calculators/top/top.js';
import type { Answer as AnyAnswer } from './ledger/answer.js';
import { backing as backingWords } from './words/en/backing.js';
import { batting as battingWords } from './words/en/batting.js';
import { binding as bindingWords } from './words/en/binding.js';
import { borders as bordersWords } from './words/en/borders.js';
import { cutting as cuttingWords } from './words/en/cutting.js';
import { top as topWords } from './words/en/top.js';
import { worksheet as worksheetWords } from './words/en/worksheet.js';
import { headless } from './words/headless.js';
import type { Refused, Result, Written } from './words/told.js';

export type {
  Problem,
  Refused,
  WorkingRow as Row,
  WrittenCut as Cut,
  WrittenPurchase as Purchase,
} from './words/told.js';
export { learn } from './words/languages.js';
export type { BackingInput, BattingInput, BindingInput, BordersInput, CuttingInput, TopInput };

/** What every calculator gives back. */
export type Answer = Result<AnyAnswer>;

/** What {@link reckonBacking} gives back. Lengths are exact inches. */
export type BackingResult = Result<BackingAnswer>;
/** One way to make the back. */
export type BackingLayout = Written<Layout>;
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth; the least cloth first, then the fewest
 * seams. A layout with a pieced strip comes after the whole panels unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
export const reckonBacking: (input?: BackingInput | null) => BackingResult | Refused = headless(
  backing,
  backingWords,
);
