/** The same numbers in every run: each call gives a whole number from 0 to one less than `sides`. */
export const dice =
  (seed: number) =>
  (sides: number): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return Math.floor((seed / 2 ** 32) * sides);
  };
