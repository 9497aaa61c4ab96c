import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { loaded } from '../../tools/bundle.mjs';
import { timed } from '../clock.mjs';
import { mean, median } from '../table.mjs';
import { leastHeight, PACKERS } from './packers.mjs';

export const title = 'Cutting plans beside general packers; theirs need not be one that is cut edge to edge';

const RUNS = 3;

/** The medians of these works' times, which take turns, and what the works give. */
const inTurns = (works) => {
  const times = works.map(() => []);
  const values = [];
  for (let run = 0; run < RUNS; run += 1)
    works.forEach((work, at) => {
      const [value, time] = timed(work);
      values[at] = value;
      times[at].push(time);
    });
  return { values, times: times.map(median) };
};

/** A row of what ours and each packer came to. */
const row = (what, [ours, ...theirs]) => ({
  what,
  ours: [ours],
  beside: Object.keys(PACKERS).map((name, at) => ({ name, values: [theirs[at]] })),
});

/** A planner that stops the bench where its plan does not pass the checker. */
const planner = ({ planCloth, checkPlan }) => {
  return (pieces, cloth) => {
    const plan = planCloth(pieces, cloth);
    const faults = plan.ok ? checkPlan(pieces, cloth, plan) : [plan.message];
    if (faults.length) throw new Error(JSON.stringify(faults));
    return plan;
  };
};

/** The problems of the file: `{ problems: { name: { width, optimum, items: [[height, width], …] } } }`. */
const publishedRows = (file, exact, planned) => {
  const { problems } = JSON.parse(readFileSync(file, 'utf8'));
  const results = Object.values(problems).map(({ width, optimum, items }) => {
    const rects = items.map(([height, width]) => ({ width, height }));
    const pieces = rects.map(({ width, height }) => ({
      width: exact(width),
      height: exact(height),
      count: 1,
      turn: true,
    }));
    const { values, times } = inTurns([
      () => planned(pieces, { width: exact(width) }).length.valueOf(),
      ...Object.values(PACKERS).map((bins) => () => leastHeight(bins, width, rects)),
    ]);
    return { heights: values.map((height) => height / optimum), times };
  });
  const each = (of) => results[0].times.map((_, at) => of(at));
  return [
    row(
      `${results.length} published problems: height over the best known`,
      each((at) => mean(results.map(({ heights }) => heights[at]))),
    ),
    row(
      `${results.length} published problems: time, ms`,
      each((at) => results.reduce((sum, { times }) => sum + times[at], 0)),
    ),
  ];
};

/** The same numbers in every run. */
const dice = (seed) => (sides) => {
  seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
  return Math.floor((seed / 2 ** 32) * sides);
};
/** Cut sizes of real quilts, in eighths of an inch: 1 1/2, 2, 2 1/2, 3 1/2, 3 7/8, 4 1/4, 4 1/2, 4 7/8, 5 1/4, 6 1/2, 8 1/2, 12 1/2. */
const SIZES = [12, 16, 20, 28, 31, 34, 36, 39, 42, 52, 68, 100];
const quilt = (roll, kinds, most) =>
  Array.from({ length: kinds }, () => {
    const width = SIZES[roll(SIZES.length)];
    const height = roll(2) ? width : SIZES[roll(SIZES.length)];
    return { width, height, count: 1 + roll(most), turn: true };
  });

/** Lists like real quilts', cut from sheets of 18 × 20 in. */
const sheetRows = (exact, planned) => {
  const roll = dice(2);
  const totals = { values: [0, 0, 0], times: [0, 0, 0] };
  const lists = Array.from({ length: 20 }, () => quilt(roll, 2 + roll(4), 20));
  for (const list of lists) {
    const pieces = list.map((piece) => ({
      ...piece,
      width: exact(piece.width, 8),
      height: exact(piece.height, 8),
    }));
    const items = list.flatMap(({ width, height, count }) =>
      Array.from({ length: count }, () => ({ width, height })),
    );
    const found = inTurns([
      () => planned(pieces, { width: exact(18), height: exact(20) }).count,
      ...Object.values(PACKERS).map((bins) => () => bins(18 * 8, 20 * 8, items)),
    ]);
    for (const key of ['values', 'times']) totals[key] = totals[key].map((sum, at) => sum + found[key][at]);
  }
  const what = `${lists.length} lists like a quilt’s:`;
  return [row(`${what} sheets of 18 × 20 in`, totals.values), row(`${what} time, ms`, totals.times)];
};

export const measure = async (_, { data }) => {
  const { exact, ...plans } = await loaded([
    'src/measure/exact.ts',
    'src/planner/plan.ts',
    'src/planner/check.ts',
  ]);
  const planned = planner(plans);
  const isThere = existsSync(data);
  return {
    rows: [...(isThere ? publishedRows(data, exact, planned) : []), ...sheetRows(exact, planned)],
    skipped: isThere ? [] : [`published problems: there is no ${basename(data)} where it was looked for`],
  };
};
