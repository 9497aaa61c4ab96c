import type { CalculatorName } from '../../src/calculators/calculator.js';
import type { Input } from '../../src/ledger/ledger.js';
import * as headless from '../../src/reckon.js';

/** What reckons each calculator without a page, by its name. */
export const RECKON: Record<CalculatorName, (input: Input) => object> = {
  backing: headless.reckonBacking,
  batting: headless.reckonBatting,
  binding: headless.reckonBinding,
  block: headless.reckonBlock,
  borders: headless.reckonBorders,
  cutting: headless.reckonCutting,
  sleeve: headless.reckonSleeve,
  top: headless.reckonTop,
  worksheet: headless.reckonWorksheet,
};
