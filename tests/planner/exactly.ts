/** A piece for the exact search: whole sizes, whether it may be turned, and how many. */
export interface SmallPiece {
  width: number;
  height: number;
  turn: boolean;
  count: number;
}

/** Every share of so many of each piece, from none to all. */
const shares = (counts: number[]): number[][] =>
  counts.reduce<number[][]>(
    (all, count) => all.flatMap((part) => Array.from({ length: count + 1 }, (_, taken) => [...part, taken])),
    [[]],
  );

/**
 * The least length of cloth from which edge-to-edge cuts give every piece, by trying every way: one piece, or a cut
 * across or lengthwise with every share of the pieces on either side. Only for a few pieces of small whole sizes; it has
 * nothing in common with the planner.
 */
export const leastLength = (pieces: SmallPiece[], width: number): number => {
  const known = new Map<string, number>();
  const sums = new Set([0]);
  for (const { width: w, height: h, turn, count } of pieces)
    for (let i = 0; i < count; i++)
      for (const sum of [...sums])
        for (const size of turn ? [w, h] : [w]) if (sum + size < width) sums.add(sum + size);
  const cuts = [...sums].filter((sum) => sum > 0);

  const least = (counts: number[], w: number): number => {
    const key = `${w}:${counts.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const total = counts.reduce((sum, count) => sum + count, 0);
    let best = Infinity;
    if (total === 1) {
      const { width: a, height: b, turn } = pieces[counts.indexOf(1)]!;
      if (a <= w) best = b;
      if (turn && b <= w) best = Math.min(best, a);
    } else
      for (const one of shares(counts)) {
        const size = one.reduce((sum, count) => sum + count, 0);
        if (!size || size === total) continue;
        const rest = counts.map((count, i) => count - one[i]!);
        if (2 * size <= total) best = Math.min(best, least(one, w) + least(rest, w));
        for (const cut of cuts) {
          if (cut >= w) continue;
          const left = least(one, cut);
          if (left < best) best = Math.min(best, Math.max(left, least(rest, w - cut)));
        }
      }
    known.set(key, best);
    return best;
  };
  return least(
    pieces.map(({ count }) => count),
    width,
  );
};

/** The fewest sheets, by trying every share of the pieces for the first sheet and every way of cutting it. */
export const fewestSheets = (pieces: SmallPiece[], width: number, height: number): number => {
  const fits = new Map<string, boolean>();
  const known = new Map<string, number>();
  const fewest = (counts: number[]): number => {
    const key = counts.join();
    if (counts.every((count) => !count)) return 0;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = Infinity;
    const first = counts.findIndex((count) => count > 0);
    const take = (kind: number, sheet: number[]): void => {
      if (kind === counts.length) {
        if (!sheet[first]) return;
        const sheetKey = sheet.join();
        const fit =
          fits.get(sheetKey) ??
          leastLength(
            pieces.map((piece, i) => ({ ...piece, count: sheet[i]! })),
            width,
          ) <= height;
        fits.set(sheetKey, fit);
        if (fit) best = Math.min(best, 1 + fewest(counts.map((count, i) => count - sheet[i]!)));
        return;
      }
      for (let taken = counts[kind]!; taken >= 0; taken--) take(kind + 1, [...sheet, taken]);
    };
    take(0, []);
    known.set(key, best);
    return best;
  };
  return fewest(pieces.map(({ count }) => count));
};

/**
 * Whether edge-to-edge cuts give every piece from one sheet: each share of the pieces on one side of a cut, the cut as
 * near to the edge as they allow, and the rest on the other side.
 */
export const fitsSheet = (pieces: SmallPiece[], width: number, height: number): boolean => {
  const known = new Map<string, boolean>();
  const area = (counts: number[]): number =>
    counts.reduce((sum, count, i) => sum + count * pieces[i]!.width * pieces[i]!.height, 0);
  const oneFits = ({ width: w, height: h, turn }: SmallPiece, wide: number, high: number): boolean =>
    (w <= wide && h <= high) || (turn && h <= wide && w <= high);

  const fits = (counts: number[], wide: number, high: number): boolean => {
    if (area(counts) > wide * high) return false;
    const total = counts.reduce((sum, count) => sum + count, 0);
    const key = `${wide}:${high}:${counts.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const each = counts.every((count, i) => !count || oneFits(pieces[i]!, wide, high));
    const found = each && (total < 2 || shares(counts).some((one) => parts(counts, one, total, wide, high)));
    known.set(key, found);
    return found;
  };
  /** Whether a cut either way leaves such a share on one side of it and the rest on the other. */
  const parts = (counts: number[], one: number[], total: number, wide: number, high: number): boolean => {
    const size = one.reduce((sum, count) => sum + count, 0);
    if (!size || 2 * size > total) return false;
    const rest = counts.map((count, i) => count - one[i]!);
    const cutAcross = (long: number, across: number, fit: (share: number[], length: number) => boolean) => {
      let cut = Math.ceil(area(one) / across);
      const last = long - Math.ceil(area(rest) / across);
      while (cut <= last && !fit(one, cut)) cut++;
      return cut <= last && fit(rest, long - cut);
    };
    return (
      cutAcross(wide, high, (share, length) => fits(share, length, high)) ||
      cutAcross(high, wide, (share, length) => fits(share, wide, length))
    );
  };
  return fits(
    pieces.map(({ count }) => count),
    width,
    height,
  );
};
