import type { Ledger } from '../../ledger/ledger.js';
import { ownLength } from '../../ledger/lengths.js';
import { inches, type Quantity } from '../../ledger/quantity.js';
import { sidesOf, type Size } from '../../ledger/quilt.js';
import { BED_SIZES, type Bed } from '../../trade/beds.js';
import { say, type battingFields, type BattingRow } from './shape.js';

export type BattingLedger = Ledger<typeof battingFields, BattingRow>;

/** Whether the bed is one for a baby. */
export const isCrib = (bed: 'none' | Bed): boolean => bed !== 'none' && !!BED_SIZES[bed].isCrib;

/** The finished size of the quilt: the given one, or the one for a bed. */
export const quiltOrBed = (ledger: BattingLedger): Size<Quantity> => {
  const { bed, width, length } = ledger.values;
  ledger.given('bed');
  if (bed === 'none') {
    ledger.given('width', 'length');
    return { width: ledger.needed('width'), length: ledger.needed('length') };
  }
  if (width || length) ledger.note(say('sizeForBed'));

  const size = BED_SIZES[bed];
  const mattress = { width: inches(ownLength(size.width)), length: inches(ownLength(size.length)) };
  ledger.row('mattress', say('size', sidesOf(mattress)), { how: say('measureYours'), from: ['bed'] });
  ledger.given('drop', 'tuck');
  const { drop, tuck } = ledger.inputs;
  const from = ['mattress'];
  return {
    width: ledger.measurable('bedWidth', mattress.width.plus(drop.times(2)), { from }),
    length: ledger.measurable('bedLength', mattress.length.plus(drop).plus(tuck), { from }),
  };
};
