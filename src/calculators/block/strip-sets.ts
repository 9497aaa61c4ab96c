import { toMark, type Exact } from '../../measure/exact.js';
import { sayings } from '../../measure/message.js';
import { MOST_PIECES } from '../../planner/grid.js';
import type { ListedPiece } from '../cutting/cut-list.js';
import type { Chart, PlacedPatch } from './patch.js';
import { sizeOf, type Seams } from './pieces.js';

export interface StripSetSayings {
  /** A strip that is sewn to others and cut across into rows of the block. */
  rowStrip: undefined;
}

const say = sayings<StripSetSayings>();

/** Rows that are alike: their patches from the left, the finished size of one, and how many rows there are in a block. */
interface Row {
  letters: string[];
  width: Exact;
  length: Exact;
  count: number;
}

/** The patches of a chart, row by row. */
const byRow = ({ patches }: Chart): PlacedPatch[][] => {
  const rows = new Map<number, PlacedPatch[]>();
  for (const patch of patches) rows.set(patch.row, [...(rows.get(patch.row) ?? []), patch]);
  return [...rows.values()];
};

/** Whether a row of a chart is made of equal patches of one fabric each, and nothing else. */
const isOfEqual = (row: PlacedPatch[], { columns }: Chart): boolean => {
  const [first] = row;
  const areEqual = row.every(
    ({ kind, across, down }) => kind === 'plain' && across === first?.across && down === first.down,
  );
  return areEqual && row.reduce((all, { across }) => all + across, 0) === columns;
};

/** The rows of a block, if each can be cut from strips that are sewn together. A row that is turned round is the same. */
const rowsOf = (chart: Chart, block: Exact): Row[] | undefined => {
  const rows = new Map<string, Row>();
  for (const row of byRow(chart)) {
    const [first] = row;
    if (!first || !isOfEqual(row, chart)) return undefined;
    const fromLeft = [...row].sort((a, b) => a.column - b.column).flatMap(({ letters }) => letters);
    const ways = [fromLeft, [...fromLeft].reverse()].map((letters) => letters.join(' '));
    const key = [...ways.sort(), first.down].slice(1).join(' ');
    const known = rows.get(key);
    if (known) known.count += 1;
    else rows.set(key, { letters: fromLeft, ...sizeOf(first, chart, block), count: 1 });
  }
  return [...rows.values()];
};

/**
 * The strips to cut for so many blocks, as long as the cloth is wide: a set of strips for each kind of row, sewn together and cut
 * across into rows. Undefined if a row is not made of equal patches, or is longer than the cloth is wide.
 */
export const stripsFor = (
  chart: Chart,
  block: Exact,
  blocks: number,
  { seam, mark }: Seams,
  cloth: Exact,
): ListedPiece[] | undefined => {
  const rows = rowsOf(chart, block);
  const piece = say('rowStrip');
  const lines = new Map<string, ListedPiece>();
  const cut = (side: Exact): Exact => toMark(side.add(seam.mul(2)), mark);
  for (const { letters, width, length, count } of rows ?? []) {
    const each = Math.floor(cloth.div(cut(length)).valueOf());
    if (!each) return undefined;
    const sets = Math.ceil((count * blocks) / each);
    for (const fabric of letters) {
      const key = `${fabric} ${cut(width).toFraction()}`;
      const line = lines.get(key);
      if (line) line.count += sets;
      else
        lines.set(key, {
          fabric,
          piece,
          cutAs: piece,
          width: cloth,
          length: cut(width),
          between: [],
          count: sets,
          kind: 'rectangle',
        });
    }
  }
  const listed = [...lines.values()];
  return rows && listed.every(({ count }) => count <= MOST_PIECES) ? listed : undefined;
};
