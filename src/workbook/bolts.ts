import { usualLength } from '../ledger/lengths.js';
import { count, type Quantity } from '../ledger/quantity.js';
import { enoughFor, type Purchase } from '../ledger/purchase.js';
import { wholeDown } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { FOR_TWO_QUARTERS } from '../trade/cloths.js';
import type { WorkbookPart } from './input.js';
import type { BoughtLengths } from './lengths.js';
import type { Group } from './parts.js';
import { say } from './sayings.js';
import type { WorksheetLedger } from './shape.js';

/** How many bolts the kits take, with the row. If a bolt is shorter than the length for one kit: undefined, with a note. */
export const boltsFor = (
  ledger: WorksheetLedger,
  kits: number,
  { key, parts }: Group,
  cloth: Message,
  { buy, lengths }: BoughtLengths,
): number | undefined => {
  const fitting = (buy: Purchase): number => wholeDown(ledger.values.bolt.div(buy.inches));
  const tooLong = lengths.find(({ buy }) => !fitting(buy));
  if (tooLong) {
    noteTooLong(ledger, cloth, tooLong.buy, parts, fitting);
    return undefined;
  }
  // A bolt holds both lengths of a kit, or only lengths of one kind. The way with fewer bolts counts.
  const each = fitting(buy);
  const both = each ? Math.ceil(kits / each) : Infinity;
  const kinds = lengths.map(({ buy }) => ({ each: fitting(buy), buy }));
  const ofOneKind = kinds.reduce((all, { each }) => all + Math.ceil(kits / each), 0);
  const bolt = ledger.stated('bolt');
  const row = (bolts: number, how: Message): number => {
    const label = say('boltsRow', { kits });
    const value: Quantity = count(bolts);
    ledger.row(`bolts-${key}`, value, { how, label, from: [`buy-${key}`, 'kits', 'bolt'] });
    return bolts;
  };
  if (ofOneKind < both) return row(ofOneKind, say('boltsOfOneKind', { kinds, bolt }));
  const how = say(lengths.length > 1 ? 'boltsOfBoth' : 'boltsOfLengths', { each, buy, bolt });
  return row(both, how);
};

/** How many bolts the kits take if the shop cuts its fat quarters itself, as a row. A bolt that is too short for two has no row. */
export const noteBoltsForQuarters = (
  ledger: WorksheetLedger,
  { kits, ofKit }: { kits: number; ofKit: number },
  key: string,
  cloth: Message,
): void => {
  const forTwo = usualLength(FOR_TWO_QUARTERS, ledger.style);
  const pairs = wholeDown(ledger.values.bolt.div(forTwo));
  if (!pairs) return;
  const quarters = kits * ofKit;
  const length = forTwo.mul(Math.ceil(quarters / 2));
  ledger.row(`bolts-${key}`, count(Math.ceil(quarters / (2 * pairs))), {
    label: say('quarterBoltsRow', { cloth, kits }),
    how: say('boltsOfQuarters', { quarters, forTwo, length, pairs, bolt: ledger.stated('bolt') }),
    from: ['kits', 'bolt'],
  });
};

/** Says that a bolt is too short. If each part could have its own length, says which lengths those are. */
const noteTooLong = (
  ledger: WorksheetLedger,
  cloth: Message,
  buy: Purchase,
  parts: WorkbookPart[],
  fitting: (buy: Purchase) => number,
): void => {
  const apart = parts
    .filter(({ need }) => need.gt(0))
    .map(({ title, need }) => ({ title, buy: enoughFor(need, ledger.values.increment) }));
  const bolt = ledger.stated('bolt');
  const isHeld = apart.every(({ buy }) => fitting(buy));
  ledger.note(say('longerThanBolt', { cloth, buy, bolt, apart: isHeld ? apart : [] }));
};
