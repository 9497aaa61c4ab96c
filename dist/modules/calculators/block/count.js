import { countField } from '../../ledger/kinds.js';

/** How many blocks there are. A block that takes what others leave of a top may be left with none. */
const blockCount = /* @__PURE__ */ countField(20_000, { initial: '1' }, 0);

export { blockCount };
