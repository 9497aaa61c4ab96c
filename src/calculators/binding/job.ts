import type { Cloth } from '../../ledger/cloth.js';
import { joined } from '../../ledger/joined.js';
import type { Ledger } from '../../ledger/ledger.js';
import { count, type Quantity } from '../../ledger/quantity.js';
import type { BiasNeed } from '../../planner/bias.js';
import { INCHES } from '../../measure/units.js';
import { say, type bindingFields, type BindingAnswer, type BindingRow, type Narrower } from './shape.js';

export type BindingLedger = Ledger<typeof bindingFields, BindingRow>;

/** How wide a strip is cut, and the input to change if that is not possible. */
export interface Strip {
  strip: Quantity;
  stripInput: 'stripWidth' | 'finished' | 'fabricWidth';
}

/** A binding: its length, its strip, and the cloth that it is cut from. */
export interface BindingJob extends Strip {
  ledger: BindingLedger;
  need: Quantity;
  cloth: Cloth;
  /** Joined at 45°, as bias always is. */
  isDiagonal: boolean;
  /** What each join uses up. */
  loss: Quantity;
}

/** What one way to cut the binding gives. */
export type Cutting = Omit<BindingAnswer, 'length' | 'stripWidth' | 'fatQuarters' | 'used'>;

/** Adds the row of what a join uses up, and gives back the job with that row. */
export const withLossRow = (job: BindingJob): BindingJob => {
  const { ledger, strip, loss, isDiagonal } = job;
  const how = isDiagonal ? say('joinAtAngle', { strip }) : loss;
  return { ...job, loss: ledger.row('loss', loss, { how, from: ['join'] }) };
};

/** How far this many strips reach. */
export const reachBy = (strips: number, each: Quantity, { loss }: BindingJob): Quantity =>
  joined(strips, each, count(strips - 1).times(loss));

export const biasNeed = ({ ledger, need, strip, loss }: BindingJob): BiasNeed => ({
  length: need.value,
  strip: strip.value,
  seam: ledger.values.seam,
  join: loss.value,
  unit: INCHES[ledger.style.units],
});

/** If cloth is this narrow, the reader surely means wider cloth. */
const NARROW = 10;

/** Refuses a strip that is too wide for the cloth. */
export const refuseTooWide = (
  { ledger, stripInput, strip, cloth: { width } }: BindingJob,
  code: 'stripTooWide' | 'noSquare',
): never => {
  const isNarrow = width.value.lt(NARROW);
  const other: Narrower = stripInput === 'finished' ? 'finished' : 'strip';
  const narrower = isNarrow ? 'cloth' : other;
  const problem = say(code, { strip: strip.value, cloth: width.value, narrower });
  return ledger.refuse(isNarrow ? 'fabricWidth' : stripInput, problem);
};
