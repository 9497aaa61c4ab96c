import type { PlannedSayings } from '../../calculators/cutting/plan-shape.js';
import { equals, type Forms } from '../teller.js';
import type { Sentences } from '../vocabulary.js';

const PIECES: Forms = { one: 'Teil', other: 'Teile' };

const CUT_UP = { half: 'einmal diagonal geschnitten', quarter: 'zweimal diagonal geschnitten' };

/** What is said of a list that is planned, in German. */
export const planned: Sentences<PlannedSayings> = {
  squareFor: ({ piece }, t) => `Quadrat für ${t.say(piece)}`,
  widthOfFabric: ({ fabric, says }, t) => `Breite von Stoff ${fabric}: ${t.say(says)}`,
  ofPiece: ({ piece, size, says }, t) => `${t.say(piece)}, ${t.size(size)}: ${t.say(says)}`,

  // What to cut and to buy.
  cutUp: ({ piece, kind }, t) => `${t.say(piece)}: Quadrate, ${CUT_UP[kind]}`,
  ofFabric: ({ fabric, piece }, t) => `${fabric} · ${t.say(piece)}`,
  fabricName: ({ fabric }) => (fabric ? `Stoff ${fabric}` : 'Stoff'),
  stripsAcross: ({ width, need, isLeast }, t) =>
    `Streifen quer über ${t.l(width)} Stoffbreite: ${equals(t.formula(need), t.l(need))}${isLeast ? '; mit weniger geht es nicht' : '; mit weniger wurde kein Plan gefunden'}`,
  boughtEach: ({ fabrics, size }, t) => {
    const bought = fabrics.map(({ fabric, buy }) => `${fabric}${fabric && ': '}${t.bought(buy)}`);
    return `${bought.join('; ')}${size ? ` zu ${t.size(size)}` : ''}.`;
  },
  piecesFrom: ({ count, need, width }, t) =>
    `${t.many(count, PIECES)} aus ${t.l(need)} Stoff, ${t.l(width)} breit.`,

  // What is worth saying.
  betweenMarks: ({ sizes, areMore }, t) =>
    `Maße zwischen den Strichen des Lineals werden aufgerundet: ${sizes
      .map(({ written, cut }) => `${t.l(written)}, zugeschnitten ${t.l(cut)}`)
      .join('; ')}${areMore ? ' …' : '.'}`,
  caution: ({ text }) => text,

  // The drawing and the list.
  fabricHead: 'Stoff',
  noFabric: '–',
};
