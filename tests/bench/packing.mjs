import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import guillotine from 'guillotine-packer';
import { MaxRectsPacker } from 'maxrects-packer/dist/maxrects-packer.mjs';
import { rollup } from 'rollup';
import { bundling, inline } from '../tools/bundle.mjs';
import { ROOT } from '../tools/run.mjs';

/**
 * How good and how fast cutting plans are: `node tests/bench/packing.mjs [strip-packing.json]`. The file holds published
 * problems as `{ problems: { name: { width, optimum, items: [[height, width], …] } } }`.
 */
const DATA =
  process.argv[2] ?? fileURLToPath(new URL('../../../shared/data/strip-packing.json', import.meta.url));

const load = async (...paths) => {
  const code = paths.map((path) => `export * from ${JSON.stringify(ROOT + path)};`).join('\n');
  const bundle = await rollup({
    input: 'benched',
    plugins: [inline('benched', code), ...bundling()],
    logLevel: 'silent',
  });
  const { output } = await bundle.generate({});
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`);
};
const { exact, planCloth, planClothAsync, checkPlan, leastLength } = await load(
  'src/measure/exact.ts',
  'src/cutting/plan.ts',
  'src/cutting/check.ts',
  'tests/cutting/exactly.ts',
);

/** Milliseconds of processor time, which other programs on the machine do not stretch. */
const clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const timed = (work) => {
  const start = clock();
  const value = work();
  return [value, clock() - start];
};
/** Time without what the first calls of a program cost. */
const warmed = (work) => {
  const start = clock();
  do work();
  while (clock() - start < 300);
  return timed(work);
};
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const ms = (time) => `${time.toFixed(time < 10 ? 1 : 0)} ms`.padStart(9);
const row = (...cells) =>
  console.log(cells.map((cell, i) => (i ? String(cell).padStart(11) : cell.padEnd(24))).join(''));

/** The plan's length or sheets; a plan that does not pass the checker stops the bench. */
const planned = (pieces, cloth) => {
  const plan = planCloth(pieces, cloth);
  const faults = plan.ok ? checkPlan(pieces, cloth, plan) : [plan.message];
  if (faults.length) throw new Error(JSON.stringify(faults));
  return plan;
};

/** The least height at which everything goes into one bin: by halving, then downwards from there as long as it does. */
const leastHeight = (fits, least) => {
  let [low, high] = [least - 1, 2 * least];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) high = middle;
    else low = middle;
  }
  while (high > least && fits(high - 1)) high--;
  return high;
};

/** All its strategies at once: its own default. */
const byGuillotine = (width, items, least) =>
  leastHeight((binHeight) => {
    if (items.some((item) => Math.max(item.width, item.height) > Math.max(width, binHeight))) return false;
    try {
      return guillotine.packer({ binWidth: width, binHeight, items }).length === 1;
    } catch {
      return false;
    }
  }, least);

/** Each of its three ways of choosing a place; pieces may turn, and no edge-to-edge rule holds. */
const byMaxRects = (width, items, least) =>
  Math.min(
    ...[0, 1, 2].map((logic) =>
      leastHeight((height) => {
        const options = { smart: false, pot: false, square: false, allowRotation: true, logic };
        const packer = new MaxRectsPacker(width, height, 0, options);
        packer.addArray(items.map((item) => ({ ...item })));
        return packer.bins.length === 1 && packer.bins[0].rects.every((rect) => !rect.oversized);
      }, least),
    ),
  );

if (existsSync(DATA)) {
  console.log(
    'Published problems, times in processor time: height over the best height known (which need not be cut edge to edge)\n',
  );
  row('', 'pieces', 'best', 'ours', 'guillotine', 'maxrects', 'ours', 'guillotine', 'maxrects');
  const { problems } = JSON.parse(readFileSync(DATA, 'utf8'));
  const results = Object.entries(problems).map(([name, { width, optimum, items }]) => {
    const rects = items.map(([height, width], i) => ({ name: i, width, height }));
    const least = Math.ceil(rects.reduce((area, rect) => area + rect.width * rect.height, 0) / width);
    const pieces = rects.map((rect) => ({
      width: exact(rect.width),
      height: exact(rect.height),
      count: 1,
      turn: true,
    }));
    const [plan, ours] = warmed(() => planned(pieces, { width: exact(width) }));
    const [cut, guillotineTime] = warmed(() => byGuillotine(width, rects, least));
    const [packed, maxRectsTime] = warmed(() => byMaxRects(width, rects, least));
    const heights = [plan.length.valueOf(), cut, packed];
    const times = [ours, guillotineTime, maxRectsTime];
    row(name, items.length, optimum, ...heights, ...times.map(ms));
    return { ratios: heights.map((height) => height / optimum), times };
  });
  const means = [0, 1, 2].map((i) => mean(results.map(({ ratios }) => ratios[i])).toFixed(4));
  const times = [0, 1, 2].map((i) => ms(results.reduce((sum, { times }) => sum + times[i], 0)));
  row('mean ratio, whole time', '', '', ...means, ...times);
} else
  console.log(
    `Published problems: left out, for there is no file ${DATA.split('/').at(-1)} where it was looked for.`,
  );

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
    return { width, height, count: 1 + roll(most), turn: roll(4) > 0 };
  });
const inEighths = (list) =>
  list.map((piece) => ({ ...piece, width: exact(piece.width, 8), height: exact(piece.height, 8) }));

console.log('\nLists like real quilts’\n');
{
  const roll = dice(1);
  const results = [];
  while (results.length < 40) {
    // in half inches, where trying every way is still possible
    const sizes = [3, 4, 5, 7, 9, 10, 13, 17];
    const list = Array.from({ length: 1 + roll(3) }, () => {
      const width = sizes[roll(sizes.length)];
      return {
        width,
        height: roll(2) ? width : sizes[roll(sizes.length)],
        count: 1 + roll(3),
        turn: roll(4) > 0,
      };
    });
    if (list.reduce((sum, { count }) => sum + count, 0) > 7) continue;
    const pieces = list.map((piece) => ({
      ...piece,
      width: exact(piece.width, 2),
      height: exact(piece.height, 2),
    }));
    const plan = planned(pieces, { width: exact(18) });
    results.push(plan.length.mul(2).valueOf() / leastLength(list, 36));
  }
  const optimal = results.filter((ratio) => ratio === 1).length;
  console.log(
    `up to 7 pieces, 18 in cloth: ${optimal} of ${results.length} at the exact optimum, mean ratio ${mean(results).toFixed(4)}`,
  );
}
{
  const roll = dice(2);
  for (const [kinds, most] of [
    [2, 40],
    [4, 60],
    [6, 120],
    [10, 60],
  ]) {
    const runs = Array.from({ length: 15 }, () => {
      const pieces = inEighths(quilt(roll, kinds, most));
      const [plan, time] = timed(() => planned(pieces, { width: exact(40) }));
      const [steps] = timed(() => planned(pieces, { width: exact(40), step: exact(9, 2) }));
      const [sheets] = timed(() => planned(pieces, { width: exact(18), height: exact(20) }));
      return { plan, steps, sheets, time };
    });
    const ratio = (key) => mean(runs.map((run) => run[key].length.div(run[key].bound).valueOf()));
    const sheets = runs.reduce((sum, run) => sum + run.sheets.count, 0);
    const bound = runs.reduce((sum, run) => sum + run.sheets.bound.valueOf(), 0);
    console.log(
      `${kinds} sizes, up to ${most} of each: cloth over its bound ${ratio('plan').toFixed(4)} ` +
        `(bought by 1/8 yd ${ratio('steps').toFixed(4)}); ` +
        `18 × 20 in sheets ${sheets}, bound ${bound}; ${ms(mean(runs.map((run) => run.time))).trim()} each`,
    );
  }
}

console.log(
  '\nHow time grows with pieces that are all different; the slices are those a page would pause between\n',
);
planCloth([{ width: exact(3), height: exact(5), count: 50, turn: true }], { width: exact(40) });
row('pieces', 'plan', 'check', 'in slices', 'longest', 'of these');
for (const count of [10, 20, 50, 100, 200, 500, 1000]) {
  const roll = dice(count);
  const list = Array.from({ length: count }, () => ({
    width: exact(8 + roll(96), 8),
    height: exact(8 + roll(96), 8),
    count: 1,
    turn: true,
  }));
  const cloth = { width: exact(40) };
  const [plan, planTime] = timed(() => planCloth(list, cloth));
  const [, checkTime] = timed(() => checkPlan(list, cloth, plan));
  const slices = [];
  const start = clock();
  let last = start;
  const stop = () => {
    const now = clock();
    slices.push(now - last);
    last = now;
  };
  await planClothAsync(list, cloth, { onProgress: stop });
  stop();
  row(String(count), ms(planTime), ms(checkTime), ms(last - start), ms(Math.max(...slices)), slices.length);
}
