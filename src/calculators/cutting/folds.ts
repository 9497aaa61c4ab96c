import { least, most, ZERO, type Exact } from '../../measure/exact.js';
import type { FabricPlan } from './plan-shape.js';
import { say, type CuttingLedger } from './shape.js';

/** How often the cloth is folded so that a cut across it fits the ruler and the mat. */
const foldsFor = (width: Exact, reach: Exact): number => {
  let folds = 0;
  for (let folded = width; folded.gt(reach) && folds < 10; folded = folded.div(2)) folds += 1;
  return folds;
};

/** Twice, because a rotary cutter cuts four layers at most. Common practice, no source. */
const MOST_FOLDS = 2;

/** Says how to fold cloth and strips, so that a cut across them fits the ruler and the mat. */
export const noteFolds = (ledger: CuttingLedger, fabrics: FabricPlan[]): void => {
  const { ruler, mat } = ledger.values;
  const reach = least(ruler, most(...mat));
  const width = most(...fabrics.map(({ width }) => width));
  const height = most(ZERO, ...fabrics.flatMap(({ strips }) => strips.map(({ height }) => height)));
  const across = foldsFor(width, reach);
  if (across > MOST_FOLDS) ledger.note(say('tooWideToFold', { width, reach }));
  else ledger.note(say('foldAcross', { folds: across, reach }));
  const folds = foldsFor(height, reach);
  if (folds > 1) ledger.note(say('tooTallToFold', { height }));
  else if (folds) ledger.note(say('foldStrips', { reach }));
};
