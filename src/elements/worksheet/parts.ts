import type { Answer } from '../../ledger/answer.js';
import type { Reckoning } from '../../ledger/ledger.js';
import type { Face } from '../../face/face.js';
import { flowing } from '../../workbook/fabrics.js';
import { isSame, type Flow, type FlowingPart } from '../../workbook/flow.js';
import type { PartOnPage } from '../../workbook/gather.js';
import type { PlacedBlock } from '../../workbook/places.js';
import type { ListFace } from '../../face/list-face.js';
import type { Style } from '../../measure/format.js';
import { unitsOr } from '../../measure/units.js';
import type { QuiltBlock } from '../block/block.js';
import type { QuiltTop } from '../top/top.js';

/** A list of what to cut for the blocks. */
export const isCutList = (part: Face): part is ListFace => 'isAsWritten' in part;

export const isBlock = (part: Face): part is QuiltBlock => 'fills' in part;

const isTop = (part: Face): part is QuiltTop => 'blocks' in part;

/** A part that sizes flow through. */
interface PartInPage extends FlowingPart {
  part: Face;
}

/** What the places of the top ask of a block. Its own size is in its own units, or in those of the worksheet. */
const placedOf = ({ count, fills, block, units }: QuiltBlock, style: Style): PlacedBlock => ({
  count,
  fills,
  block: flowing(block, { ...style, bare: unitsOr(units, style.bare ?? style.units) }).inches,
});

export const flowingPart = (part: Face, style: Style): PartInPage => ({
  part,
  calculator: part.calculator,
  fabric: part.fabric,
  get input() {
    return part.reckonInput();
  },
  isCutList: isCutList(part),
  placed: isBlock(part) ? placedOf(part, style) : undefined,
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
