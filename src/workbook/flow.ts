import { ownUnits } from '../measure/format.js';
import type { Calculator, CalculatorName } from '../calculators/calculator.js';
import type { Answer } from '../ledger/answer.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { isExact } from '../measure/exact.js';
import { Message } from '../measure/message.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { flowing, type Fabrics } from './fabrics.js';
import { sayOfFlow } from './flow-sayings.js';
import { flowingCount, isPlaced, sharesOf, unevenOf, type PlacedBlock, type TopBlocks } from './places.js';

/** The values that a worksheet gives to a calculator inside it, and where they come from. */
export interface Flow {
  values: Record<string, unknown>;
  from: Record<string, Message>;
}

/** A part that sizes flow through. */
export interface FlowingPart {
  calculator: Calculator;
  /** The letters of its fabrics, as the author wrote them. */
  fabric?: unknown;
  /** The inputs that the author gave it. */
  input: Input;
  /** For a top: its blocks as the author wrote them, and as they are now. Undefined if they are wrong. */
  blocks?: TopBlocks | undefined;
  /** Whether it is a list of what to cut for the blocks. */
  isCutList?: boolean | undefined;
  /** For a block: what the places of the top ask of it. */
  placed?: PlacedBlock | undefined;
}

/** The inputs of the worksheet itself, as the author wrote them. */
export interface FlowSource {
  width?: unknown;
  length?: unknown;
  seam?: unknown;
  units?: unknown;
  shown?: unknown;
  shrinkage?: unknown;
  increment?: unknown;
  currency?: unknown;
}

/** A quilt's size as it flows from one part to the next. */
interface QuiltSize {
  width?: unknown;
  length?: unknown;
}

/** The order: first the part that makes the quilt from blocks, then those that make it larger, then the others. */
const place = ({ calculator }: FlowingPart): number =>
  calculator.finishes ? Number('width' in calculator.fields) : 2;

/** Whether a list of what to cut is for other blocks than the top has now. A block has its own number, so only its size counts. */
const isOutgrown = ({ placed }: FlowingPart, { written, now }: TopBlocks): boolean => {
  if (!written || !now || (placed && !placed.block)) return false;
  return !written.block.equals(now.block) || (!placed && written.count !== now.count);
};

/** Says that the list lacks cloth for the blocks: there is no cut list, or it is for other blocks. */
const cautionOf = ({ written, now }: TopBlocks, lists: number, outgrown: number): Message | undefined => {
  if (!now) return undefined;
  if (!lists) return sayOfFlow('noClothForBlocks');
  return written && outgrown ? sayOfFlow('listForOtherBlocks', { now, written }) : undefined;
};

/** What the blocks of the top mean for the lists of what to cut. */
interface OfTop<P> {
  blocks: TopBlocks;
  placed: PlacedBlock[];
  /** The blocks that lie in its places, and how many there are of each. Undefined if nobody can read that. */
  counted: { part: P; count: number | undefined }[];
  /** Says what the list lacks, and which lists that is about. */
  caution: Message | undefined;
  outgrown: P[];
  /** Says that there are fewer or more blocks than places. */
  uneven: Message | undefined;
}

const ofTop = <P extends FlowingPart>(blocks: TopBlocks, parts: P[]): OfTop<P> => {
  const lists = parts.filter(({ isCutList, placed }) => isCutList && !(placed && !isPlaced(placed, blocks)));
  const outgrown = lists.filter((list) => isOutgrown(list, blocks));
  const placed = lists.flatMap(({ placed }) => placed ?? []);
  return {
    blocks,
    placed,
    counted: lists
      .filter(({ placed }) => placed)
      .map((part, at) => ({ part, count: sharesOf(blocks.now?.count ?? 0, placed)[at] })),
    outgrown,
    caution: cautionOf(blocks, lists.length, outgrown.length),
    uneven: blocks.now && unevenOf(blocks.now.count, placed),
  };
};

/** What a top gives a part: the size of its blocks, and how many of this one there are. */
const fromTop = <P extends FlowingPart>(
  { blocks: { now }, placed, caution, outgrown }: OfTop<P>,
  part: P,
): Record<string, unknown> => ({
  caution: outgrown.includes(part) ? caution : undefined,
  ...(now && !part.calculator.finishes && { block: now.block }),
  ...(now && part.placed && { count: flowingCount(now.count, placed, part.placed) }),
});

/** What flows to every part in the same way. */
const forAll = ({ width, length, seam, ...shared }: FlowSource, fabrics: Fabrics) => {
  const [wide, long, allowance] = [width, length, seam].map((raw) => flowing(raw, fabrics.style).value);
  const usualWidth = fabrics.widthOf('').width ?? COTTON_WIDTH[ownUnits(fabrics.style)];
  const size: QuiltSize = { width: wide, length: long };
  return {
    size,
    values: {
      ...shared,
      seam: allowance,
      widths: fabrics.widths,
      sheets: fabrics.sheets,
      usualWidth,
      swatches: fabrics.swatches,
      names: fabrics.names,
    },
  };
};

/** What flowed, and what the reader should know about it. */
interface Flowed<P> extends Partial<Pick<OfTop<P>, 'caution' | 'uneven'>> {
  size: QuiltSize;
  /** The lists that are for other blocks than the top has now. */
  outgrown: P[];
  counted: OfTop<P>['counted'];
}

/**
 * Lets sizes and settings flow through the parts, in one pass: nothing flows back. `give` gives a part its values, and returns what
 * the part makes of them.
 */
export const flow = <P extends FlowingPart>(
  source: FlowSource,
  parts: P[],
  fabrics: Fabrics,
  give: (part: P, flow: Flow) => Reckoning<Answer>,
): Flowed<P> => {
  const all = forAll(source, fabrics);
  let top: OfTop<P> | undefined;
  let { size } = all;
  let from: Message = sayOfFlow('fromWorksheet');
  for (const part of [...parts].sort((a, b) => place(a) - place(b))) {
    const { calculator } = part;
    const letters = fabrics.lettersIn(part.fabric);
    const { fabricWidth, fabricWidths, from: clothFrom } = fabrics.widthsOf(letters);
    // Something that is bought by the piece is not added to other cloth.
    const shared = !calculator.byPiece?.(part.input);
    const apart = new Set(letters).size > 1;
    const cloth = { letters, fabricWidth, fabricWidths, shared, apart };
    const values: Flow['values'] = { ...all.values, ...size, ...cloth, ...(top && fromTop(top, part)) };
    // A part that takes no size does not change with it.
    const sizes = Object.keys(size).filter((key) => !(key in calculator.fields));
    for (const key of [...sizes, ...(calculator.own ?? [])]) delete values[key];
    const fromPart = (part: CalculatorName): Message => sayOfFlow('fromPart', { part });
    const { own: answer } = give(part, {
      values,
      from: {
        width: from,
        length: from,
        fabricWidth: clothFrom,
        block: fromPart('top'),
        count: fromPart('top'),
      },
    });
    const { blocks } = part;
    if (blocks?.now) top ??= ofTop(blocks, parts);
    if (!calculator.finishes) continue;
    size = answer ? calculator.finishes(answer) : {};
    from = fromPart(calculator.name);
  }
  const { caution, uneven, outgrown = [], counted = [] } = top ?? {};
  return { size, caution, uneven, outgrown, counted };
};

/** Whether two values that flow are equal, at any depth: exact numbers and messages too. */
export const isSame = (a: unknown, b: unknown): boolean => {
  // Most values are the same object, such as the words of a language. Then there is no need to look inside.
  if (Object.is(a, b)) return true;
  if (isExact(a) && isExact(b)) return a.equals(b);
  if (typeof a !== 'object' || typeof b !== 'object' || !a || !b) return false;
  if (a instanceof Message && b instanceof Message && a.code !== b.code) return false;
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => isSame(one[key], other[key]));
};
