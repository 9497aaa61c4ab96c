import type { PlannedSayings } from '../../calculators/cutting/plan-shape.js';
import { equals, type Forms } from '../teller.js';
import type { Sentences } from '../vocabulary.js';

const PIECES: Forms = { one: 'piece', other: 'pieces' };

const CUT_UP = { half: 'cut once on the diagonal', quarter: 'cut twice on the diagonal' };

/** What is said of a list that is planned, in English. */
export const planned: Sentences<PlannedSayings> = {
  squareFor: ({ piece }, t) => `square for ${t.say(piece)}`,
  widthOfFabric: ({ fabric, says }, t) => `The width of fabric ${fabric}: ${t.say(says)}`,
  ofPiece: ({ piece, size, says }, t) => `${t.say(piece)}, ${t.size(size)}: ${t.say(says)}`,

  // What to cut and to buy.
  cutUp: ({ piece, kind }, t) => `${t.say(piece)}: squares, ${CUT_UP[kind]}`,
  ofFabric: ({ fabric, piece }, t) => `${fabric} · ${t.say(piece)}`,
  fabricName: ({ fabric }) => (fabric ? `Fabric ${fabric}` : 'Cloth'),
  stripsAcross: ({ width, need, isLeast }, t) =>
    `strips across cloth of ${t.l(width)}: ${equals(t.formula(need), t.l(need))}${isLeast ? '; less is not enough' : '; we found no layout with less'}`,
  boughtEach: ({ fabrics, size }, t) => {
    const bought = fabrics.map(({ fabric, buy }) => `${fabric}${fabric && ': '}${t.bought(buy)}`);
    return `${bought.join('; ')}${size ? ` of ${t.size(size)}` : ''}.`;
  },
  piecesFrom: ({ count, need, width }, t) =>
    `${t.many(count, PIECES)} from ${t.l(need)} of cloth ${t.l(width)} wide.`,

  // What is worth saying.
  betweenMarks: ({ sizes, areMore }, t) =>
    `These sizes are between two marks of the ruler, so cut them on a mark: ${sizes
      .map(({ written, cut }) => `${t.l(written)}, cut ${t.l(cut)}`)
      .join('; ')}${areMore ? ' …' : '.'}`,
  caution: ({ text }) => text,

  // The drawing and the list.
  fabricHead: 'Fabric',
  noFabric: '–',
};
