import { readFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';

/** How many programs want a core at this moment; 0 where the system does not tell. */
const running = () => {
  try {
    return Number(/ (\d+)\//.exec(readFileSync('/proc/loadavg', 'utf8'))?.[1] ?? 0);
  } catch {
    return 0;
  }
};

/**
 * How many programs share a core now, this one left out: a test takes as many times as long beside them. The load of the last minute does
 * not know yet of one that has just begun.
 */
const share = Math.max(1, Math.max(loadavg()[0], running()) / availableParallelism());

/** Milliseconds after which a test counts as hanging: 20 s on a quiet machine. No test comes near it by itself. */
export const TEST_LIMIT = Math.round(20_000 * share);

/** The same for what is made ready before the tests of a file: that may build other people's projects. */
export const SETUP_LIMIT = 15 * TEST_LIMIT;
