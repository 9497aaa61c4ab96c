import { sizeForBed } from '../../ledger/bed.js';
import type { Ledger } from '../../ledger/ledger.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { say, type battingFields, type BattingRow } from './shape.js';

export type BattingLedger = Ledger<typeof battingFields, BattingRow>;

/** The finished size of the quilt: the given one, or the one for a bed. */
export const quiltOrBed = (ledger: BattingLedger): Size<Quantity> => {
  const { bed, width, length } = ledger.values;
  ledger.given('bed');
  if (bed === 'none') {
    ledger.given('width', 'length');
    return { width: ledger.needed('width'), length: ledger.needed('length') };
  }
  if (width || length) ledger.note(say('sizeForBed'));
  return sizeForBed(ledger, bed);
};
