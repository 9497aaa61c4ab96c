import type { Answer } from '../../ledger/answer.js';
import type { Reckoning } from '../../ledger/ledger.js';
import type { Face } from '../../face/face.js';
import { isSame, type Flow, type FlowingPart } from '../../workbook/flow.js';
import type { PartOnPage } from '../../workbook/gather.js';
import type { ListFace } from '../../face/list-face.js';
import { isBlank } from '../../ledger/field.js';
import type { QuiltTop } from '../top/top.js';

/** A list of what to cut for the blocks. */
export const isCutList = (part: Face): part is ListFace => 'isAsWritten' in part;

const isTop = (part: Face): part is QuiltTop => 'blocks' in part;

/** A part that sizes flow through. */
interface PartInPage extends FlowingPart {
  part: Face;
}

export const flowingPart = (part: Face): PartInPage => ({
  part,
  calculator: part.calculator,
  fabric: part.fabric,
  get input() {
    return part.reckonInput();
  },
  isCutList: isCutList(part),
  followsBlock: 'chart' in part.calculator.fields && isBlank((part as { block?: unknown }).block),
  // It knows its blocks only after it has its sizes.
  get blocks() {
    return isTop(part) ? part.blocks : undefined;
  },
});

/** Gives a part what flows to it, and returns its new result. */
export const giveTo = ({ part }: PartInPage, flow: Flow): Reckoning<Answer> => {
  if (!isSame(flow, part.flow)) part.flow = flow;
  return part.outcome.reckoning;
};

/** A part, and its result. */
export const partOnPage = ({ calculator, outcome, fabric }: Face): PartOnPage => ({
  calculator,
  reckoning: outcome.reckoning,
  fabric,
});
