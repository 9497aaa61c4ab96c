import { ownWords } from '../../ledger/own-words.js';
import type { Calculator } from '../calculator.js';
import { lists } from '../cutting/lists.js';
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
  takes: ({ fabrics, used: { name } }) =>
    fabrics.map(({ fabric, need, width, sold, used: { cuts } }) => ({
      fabric,
      ...(name && { title: ownWords(name) }),
      need,
      width,
      sold,
      cuts,
    })),
};
