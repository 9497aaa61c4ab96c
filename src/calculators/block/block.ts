import { ownWords } from '../../ledger/own-words.js';
import type { Calculator } from '../calculator.js';
import { lists } from '../cutting/lists.js';
import { takeOf } from '../cutting/take.js';
import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { blockFields, type BlockAnswer } from './shape.js';

/** A block of the quilt, from its chart. */
export const block: Calculator<BlockAnswer> = {
  name: 'block',
  fields: blockFields,
  reckon,
  draw,
  lists,
  makes: ({ count, used: { name, oneWay, kept, piecesOf } }) => ({
    ...(name && { title: ownWords(name) }),
    count,
    oneWay,
    kept,
    piecesOf,
  }),
  takes: ({ fabrics, week, used: { name, oneWay } }) =>
    fabrics.map((fabric) => ({
      ...takeOf(fabric, oneWay),
      ...(name && { title: ownWords(name) }),
      week,
    })),
};
