import { median } from './table.mjs';

/** Milliseconds of processor time, which other programs on the machine do not stretch. */
const clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** What a piece of work gives, and the time it takes. */
export const timed = (work) => {
  const start = clock();
  const value = work();
  return [value, clock() - start];
};

/** How long a batch of calls lasts at least; the clock is not sharp enough for one. */
const BATCH = 40;
const BATCHES = 9;

/** How many calls fill a batch, found after the first calls of a program, which are slow. */
const callsIn = (work) => {
  for (let calls = 1; ; calls *= 2) {
    const [, time] = timed(() => {
      for (let at = 0; at < calls; at += 1) work(at);
    });
    if (time > 4 * BATCH) return Math.max(1, Math.round((calls * BATCH) / time));
  }
};

/**
 * Milliseconds a call, the median of batches, of each of these; the batches take turns, so that what else the machine
 * does falls on all alike. Each call is given another whole number.
 * @param {((at: number) => unknown)[]} works
 */
export const inTurns = (works) => {
  const calls = works.map(callsIn);
  const times = works.map(() => []);
  let at = 0;
  for (let batch = 0; batch < BATCHES; batch += 1)
    works.forEach((work, which) => {
      const [, time] = timed(() => {
        for (let call = 0; call < calls[which]; call += 1) work((at += 1));
      });
      times[which].push(time / calls[which]);
    });
  return times.map(median);
};
