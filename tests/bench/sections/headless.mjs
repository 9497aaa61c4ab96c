import { inTurns } from '../clock.mjs';
import { isThere, peer } from '../peers.mjs';
import { atMost, figure } from '../table.mjs';
import { inHyperformula, inMathjs, SUMS } from './sums.mjs';

export const title =
  'Without a page, a call of reckon.js, ms: the same sums beside it, without their working; what is not read is not put in words';

/** From 50 to 62 7/8 in, an eighth of an inch at a time. */
const widthAt = (at) => 50 + (at % 104) / 8;

/** Calls with another width each; the cut list grows by a line's number instead. */
const callsOf = (reckon) => {
  const quilt = (at) => ({ width: widthAt(at), length: 70 });
  const parts = [
    { title: 'Backing', fabric: 'A', need: reckon.reckonBacking(quilt(0)).fabric },
    { title: 'Binding', fabric: 'A', need: reckon.reckonBinding(quilt(0)).fabric },
  ];
  return {
    backing: (at) => reckon.reckonBacking(quilt(at)),
    'backing, its amount read': (at) => reckon.reckonBacking(quilt(at)).buy.amount,
    'backing, its amount and working read': (at) => {
      const { buy, working } = reckon.reckonBacking(quilt(at));
      return [buy.amount, working];
    },
    binding: (at) => reckon.reckonBinding(quilt(at)),
    batting: (at) => reckon.reckonBatting({ ...quilt(at), roll: 96 }),
    borders: (at) => reckon.reckonBorders({ ...quilt(at), borders: '2, 4 1/2' }),
    top: (at) => reckon.reckonTop({ block: widthAt(at) / 5, across: 4, down: 5, sashing: 2 }),
    cutting: (at) => reckon.reckonCutting({ list: `A | square | 3 1/2 in | ${48 + (at % 50)}` }),
    worksheet: (at) =>
      reckon.reckonWorksheet({
        fabrics: [{ letter: 'A', name: 'Slate Roof', price: 12 + (at % 50) / 4 }],
        parts,
      }),
  };
};

/** A peer's sums; it stops the bench where they come to something else than ours. */
const checked = (name, sums, ours) => {
  for (let at = 0; at < 104; at += 1) {
    const { amount } = ours(at).buy;
    const [whole, over = 1] = amount.split('/').map(Number);
    if (Math.abs(sums(widthAt(at)) - whole / over) > 1e-9)
      throw new Error(`${name} comes to ${sums(widthAt(at))}, and ours to ${amount}`);
  }
  return { name, work: (at) => sums(widthAt(at)) };
};

const peersOf = (sums, ours) => [
  ...(isThere('mathjs') ? [checked('mathjs', inMathjs(peer('mathjs'), sums), ours)] : []),
  ...(isThere('hyperformula')
    ? [checked('hyperformula', inHyperformula(peer('hyperformula'), sums), ours)]
    : []),
];

const GOALS = { 'backing, its amount read': 0.1, 'backing, its amount and working read': 0.2 };

export const measure = async () => {
  const calls = callsOf(await import(new URL('../../../dist/reckon.js', import.meta.url).href));
  const rows = Object.entries(calls).map(([name, ours]) => {
    const peers = SUMS[name] ? peersOf(SUMS[name], ours) : [];
    const [time, ...theirs] = inTurns([ours, ...peers.map(({ work }) => work)]);
    const limit = GOALS[name];
    return {
      what: `${name} (${figure(Math.round(1000 / time))} calls a second)`,
      ours: [time],
      beside: peers.map(({ name }, at) => ({ name, values: [theirs[at]] })),
      ...(limit && { goal: atMost(`≤ ${limit} ms`, time, limit) }),
    };
  });
  const skipped = ['mathjs', 'hyperformula'].filter((name) => !isThere(name));
  return { rows, skipped: skipped.map((name) => `${name}, which is not installed`) };
};
