import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact, most, ONE, sum, ZERO, type Exact } from '../../src/measure/exact.js';
import { reckonBorders, type BordersResult } from '../../src/reckon.js';
import { CORNERS, eighths, inputs } from './borders-inputs.js';
import { answersOf } from './asked.js';

const reckon = answersOf(reckonBorders);

/** What the verifier knows of the cloth and of the pieces, from the input and the cut list only. */
interface Cloth {
  width: Exact;
  lossOf: (strip: Exact) => Exact;
  kept: Exact;
}
const clothOf = (input: { fabricWidth: string; seam: string; join: string; shrinkage: unknown }): Cloth => {
  const kept = ONE.sub(exact(String(input.shrinkage)).div(100));
  const seams = exact(input.seam).mul(2);
  return {
    width: exact(input.fabricWidth).mul(kept),
    lossOf: (strip) => (input.join === 'diagonal' ? strip : seams),
    kept,
  };
};
interface Cut {
  length: Exact;
  width: Exact;
  corner: boolean;
}
const each = (list: { count: number; piece: string; length: string; width: string }[]): Cut[] =>
  list.flatMap(({ count, piece, length, width }) =>
    Array<Cut>(count).fill({ length: exact(length), width: exact(width), corner: piece.includes('corner') }),
  );
const cutsOf = (result: BordersResult, at: number): Cut[] =>
  each(result.cuts.filter(({ piece }) => piece.startsWith(`border ${at + 1},`)));

/** How long some strips get, joined end to end; what is too short to be joined is left out. */
const joined = (strips: Exact[], loss: Exact): Exact => {
  const [first, ...rest] = strips.filter((strip) => strip.gt(loss));
  return rest.reduce((long, strip) => long.add(strip).sub(loss), first ?? most(ZERO, ...strips));
};

/** Corner squares first, each whole from a strip; then all that is left is joined and cut up. */
const doesJoined = (count: number, wide: Exact, cuts: Cut[], { width, lossOf }: Cloth): boolean => {
  const strips = Array<Exact>(count).fill(width);
  for (const { length, corner } of cuts) {
    if (!corner) continue;
    const from = strips.findIndex((strip) => strip.gte(length));
    if (from < 0) return false;
    strips[from] = strips[from]!.sub(length);
  }
  return joined(strips, lossOf(wide)).gte(
    sum(cuts.flatMap(({ length, corner }) => (corner ? [] : [length]))),
  );
};

/** Whole strips while the piece is longer than the cloth is wide; then every way of putting the rest into strips. */
const leastSeparate = (wide: Exact, cuts: Cut[], { width, lossOf }: Cloth): number => {
  let whole = 0;
  const rest = cuts.map(({ length }) => {
    while (length.gt(width)) {
      length = length.sub(width.sub(lossOf(wide)));
      whole += 1;
    }
    return length;
  });
  let found = rest.length;
  const put = (next: number, rooms: Exact[]): void => {
    if (rooms.length >= found) return;
    if (next === rest.length) {
      found = rooms.length;
      return;
    }
    const piece = rest[next]!;
    rooms.forEach((room, at) => {
      if (room.gte(piece))
        put(
          next + 1,
          rooms.map((other, i) => (i === at ? room.sub(piece) : other)),
        );
    });
    put(next + 1, [...rooms, width.sub(piece)]);
  };
  put(0, []);
  return whole + found;
};

/**
 * Lays the pieces on the cloth, longest first: each behind the first piece that leaves it room in its row, else to the
 * right of a row's pieces, else at the left of a new row; and says how far down it got.
 */
const reachAlong = (cuts: Cut[], { width: room }: Cloth): Exact => {
  const placed: { left: Exact; right: Exact; top: Exact; bottom: Exact; row: number; last: boolean }[] = [];
  const rows: { top: Exact; bottom: Exact; right: Exact }[] = [];
  const reached = (): Exact => most(ZERO, ...placed.map(({ bottom }) => bottom));
  for (const { length, width } of [...cuts].sort((a, b) => b.length.compare(a.length))) {
    // columns in the order they were begun: by row, then from the left
    const above = placed
      .filter(
        (at) =>
          at.last && at.right.sub(at.left).gte(width) && at.bottom.add(length).lte(rows[at.row]!.bottom),
      )
      .sort((a, b) => a.row - b.row || a.left.compare(b.left))[0];
    if (above) {
      above.last = false;
      const { left, bottom: top, row } = above;
      // the column stays as wide as the piece that began it
      placed.push({ left, right: above.right, top, bottom: top.add(length), row, last: true });
      continue;
    }
    let row = rows.findIndex(({ right }) => right.add(width).lte(room));
    if (row < 0) row = rows.push({ top: reached(), bottom: reached().add(length), right: ZERO }) - 1;
    const { right: left, top } = rows[row]!;
    rows[row]!.right = left.add(width);
    placed.push({ left, right: left.add(width), top, bottom: top.add(length), row, last: true });
  }
  placed.forEach((a, i) => {
    expect(a.right.lte(room)).toBe(true);
    for (const b of placed.slice(i + 1))
      expect(a.right.lte(b.left) || b.right.lte(a.left) || a.bottom.lte(b.top) || b.bottom.lte(a.top)).toBe(
        true,
      );
  });
  return reached();
};

/** The least cloth, once washed, that a border takes by such a plan, found by trying. */
const leastCloth = (plan: string, wide: Exact, cuts: Cut[], cloth: Cloth): Exact => {
  if (plan === 'along') return reachAlong(cuts, cloth);
  if (plan === 'separate') return wide.mul(leastSeparate(wide, cuts, cloth));
  let count = 1;
  const all = sum(cuts.map(({ length }) => length));
  while (joined(Array<Exact>(count).fill(cloth.width), cloth.lossOf(wide)).lt(all)) count += 1;
  return wide.mul(count);
};

const wideOf = (result: BordersResult, at: number): Exact =>
  exact(result.cuts.find(({ piece }) => piece.startsWith(`border ${at + 1},`))!.width);

describe('cloth, laid out again', () => {
  test('every plan yields every piece, and takes no strip too many', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckon(input);
        const cloth = clothOf(input);
        result.borders.forEach((border, at) => {
          const cuts = cutsOf(result, at);
          const wide = wideOf(result, at);
          expect(cuts.map(({ length }) => length.toFraction())).toEqual(
            border.pieces.flatMap(({ count, length }) =>
              Array<string>(count).fill(exact(length).toFraction()),
            ),
          );
          for (const { plan, strips, fabric } of border.plans) {
            const washed = exact(fabric).mul(cloth.kept);
            if (plan === 'joined') expect(doesJoined(strips, wide, cuts, cloth)).toBe(true);
            if (plan !== 'along') expect(wide.mul(strips).equals(washed)).toBe(true);
            expect(leastCloth(plan, wide, cuts, cloth).toFraction(), plan).toBe(washed.toFraction());
          }
        });
      }),
      { numRuns: 300 },
    );
  });

  test('what is bought is enough for all borders, and one shop step less never is', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckon(input);
        const cloth = clothOf(input);
        const cuts = result.borders.map((_, at) => cutsOf(result, at));
        const apart = result.borders.map(({ plan }, at) =>
          leastCloth(plan, wideOf(result, at), cuts[at]!, cloth),
        );
        // Along the cloth, the pieces of all borders may lie side by side.
        const together = input.grain === 'along' ? [reachAlong(cuts.flat(), cloth)] : [];
        const enough = (bought: Exact, only?: number): boolean =>
          (only === undefined ? [sum(apart), ...together] : [apart[only]!]).some((least) =>
            bought.mul(cloth.kept).gte(least),
          );
        const steps = { '1/8 yd': ['9/2'], '1/4 yd': ['9'], thirds: ['9/2', '12'], '10 cm': ['500/127'] }[
          input.increment
        ];
        const below = (bought: Exact): Exact =>
          most(ZERO, ...steps.map((step) => bought.div(exact(step)).ceil().sub(1).mul(exact(step))));
        const amounts: [string, number?][] = [
          [result.buy.inches],
          ...result.borders.map(({ buy }, at): [string, number] => [buy.inches, at]),
        ];
        for (const [inches, only] of amounts) {
          expect(enough(exact(inches), only)).toBe(true);
          expect(enough(below(exact(inches)), only)).toBe(false);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('sizes off the marks: enough for the cut list and for the exact sizes', () => {
    const loose = fc
      .constantFrom(7, 64, 100, 254)
      .chain((d) => fc.integer({ min: 1, max: 110 * d }).map((n) => exact(n, d)));
    fc.assert(
      fc.property(
        loose,
        loose,
        loose,
        fc.constantFrom(...CORNERS),
        fc.constantFrom('in', 'cm'),
        fc.constantFrom(0, 3),
        (w, l, b, corners, units, shrinkage) => {
          const inches = (value: Exact): string => `${value.toFraction()} in`;
          const input = {
            width: inches(w.add(6)),
            length: inches(l.add(6)),
            borders: inches(b.div(12).add(exact(1, 4))),
            corners,
            units,
            shrinkage,
            fabricWidth: '40 in',
            seam: '1/4 in',
          };
          const result = reckon({ ...input, increment: '1/8 yd' });
          const cloth = clothOf({ fabricWidth: '40', seam: '1/4', join: 'diagonal', shrinkage });
          const border = result.borders[0]!;
          for (const [wide, cuts] of [
            [wideOf(result, 0), cutsOf(result, 0)],
            [exact(border.pieces[0]!.width), each(border.pieces)],
          ] as const)
            for (const { plan, strips, fabric } of border.plans) {
              const washed = exact(fabric).mul(cloth.kept);
              expect(leastCloth(plan, wide, cuts, cloth).lte(washed)).toBe(true);
              if (plan === 'joined') expect(doesJoined(strips, wide, cuts, cloth)).toBe(true);
            }
        },
      ),
      { numRuns: 300 },
    );
  });

  test('across the cloth the plan is the one with fewer strips, then fewer joins', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckon({ ...input, grain: 'across' });
        for (const { plan, plans } of result.borders) {
          const [joined, separate] = [
            plans.find(({ plan }) => plan === 'joined'),
            plans.find(({ plan }) => plan === 'separate'),
          ];
          const first = !separate
            ? 'joined'
            : !joined
              ? 'separate'
              : joined.strips - separate.strips || joined.joins - separate.joins;
          expect(plan).toBe(typeof first === 'string' ? first : first > 0 ? 'separate' : 'joined');
        }
      }),
    );
  });

  test('a last border of two widths: each width has its own strips, and the cloth is enough', () => {
    fc.assert(
      fc.property(inputs, eighths(0, 96), eighths(0, 96), (input, sides, ends) => {
        const size = (side: string, border: string): string =>
          exact(side).add(exact(border).mul(2)).toFraction(true);
        const target = `${size(input.width, sides)} x ${size(input.length, ends)}`;
        const result = reckonBorders({ ...input, borders: '', target });
        if (result.errors) {
          // Mitred, a border has one width; and of no width there is none.
          const reason = sides === ends ? 'target' : 'corners';
          expect(result.errors.map(({ input }) => input)).toEqual([reason]);
          expect(reason === 'target' ? sides === '0/8' : input.corners === 'mitred').toBe(true);
          return;
        }
        const cloth = clothOf(input);
        expect(result.finished).toEqual({
          width: size(input.width, sides),
          length: size(input.length, ends),
        });
        const cuts = cutsOf(result, 0);
        // The calculator takes one width after the other, so of equally long pieces those of the first width are laid first.
        const byWidth = [...new Set(result.cuts.map(({ width }) => width))].map((text) =>
          cuts.filter(({ width }) => width.equals(exact(text))),
        );
        for (const { plan, fabric } of result.borders[0]!.plans) {
          const least =
            plan === 'along'
              ? reachAlong(byWidth.flat(), cloth)
              : sum(byWidth.map((cuts) => leastCloth(plan, cuts[0]!.width, cuts, cloth)));
          expect(least.toFraction(), plan).toBe(exact(fabric).mul(cloth.kept).toFraction());
        }
      }),
      {
        numRuns: 200,
        examples: [
          [
            {
              ...{ width: '76/8', length: '48/8', borders: '2/8', corners: 'squares', grain: 'across' },
              ...{ join: 'diagonal', fabricWidth: '144/8', seam: '1/4', shrinkage: 0, increment: '1/8 yd' },
            },
            '45/8',
            '76/8',
          ],
        ],
      },
    );
  });
});
