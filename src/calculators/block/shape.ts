import type { Answer } from '../../ledger/answer.js';
import { clothFields, type Cloth } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { inputsOf, optional, textOf, type Field } from '../../ledger/field.js';
import { choiceField, countField, flagField, sheetField } from '../../ledger/kinds.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import { lengthField } from '../../ledger/lengths.js';
import { blocksField, type Size } from '../../ledger/quilt.js';
import { shopFields, type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { sayings, type Message } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';
import type { Purchase } from '../../ledger/purchase.js';
import type {
  FabricPlan,
  FabricRow,
  ListSurroundings,
  PlannedSayings,
  SheetSayings,
} from '../cutting/plan-shape.js';
import type { Making } from '../calculator.js';
import { writeChart, type ChartSayings } from './chart.js';
import type { Chart } from './patch.js';
import type { Method, PieceSayings } from './pieces.js';
import type { StripSetSayings } from './strip-sets.js';

/** Each method by its code: half-square triangles first, then geese. */
export const METHODS = {
  'two-one': { halves: 'two', geese: 'one', rows: 'patches' },
  'two-four': { halves: 'two', geese: 'four', rows: 'patches' },
  'eight-one': { halves: 'eight', geese: 'one', rows: 'patches' },
  'eight-four': { halves: 'eight', geese: 'four', rows: 'patches' },
  // A chart that is made of strips has no triangles.
  strips: { halves: 'two', geese: 'one', rows: 'strips' },
} as const satisfies Record<string, Method>;
export type MethodCode = keyof typeof METHODS;

const CODES = ['two-one', 'two-four', 'eight-one', 'eight-four', 'strips'] as const;

/** An author may leave out what stays as usual, and write the rest in any order: `four`, `four, eight`. */
const codeOf = (written: string): string => {
  const words = written
    .trim()
    .toLowerCase()
    .split(/[\s,;+-]+/);
  const isKnown = words.every((word) => /^(two|eight|one|four)$/.test(word));
  if (!isKnown) return written;
  return `${words.includes('eight') ? 'eight' : 'two'}-${words.includes('four') ? 'four' : 'one'}`;
};

const methodField = (): Field<MethodCode> & { options: readonly MethodCode[] } => {
  const field = choiceField(CODES);
  return { ...field, read: (raw, style, what) => field.read(codeOf(textOf(raw)), style, what) };
};

export const blockFields = /* @__PURE__ */ inputsOf(() => ({
  chart: {
    kind: 'own',
    lines: true,
    example: ['A B A; B A B; A B A'],
    read: (raw) => raw,
    write: writeChart,
  } satisfies Field<unknown>,
  block: lengthField({ most: '200 in' }),
  count: blocksField,
  method: methodField(),
  sheet: optional(sheetField(), { more: true }),
  oneWay: flagField({ more: true }),
  ...clothFields,
  seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
  ...markField,
  week: optional(countField(520), { more: true }),
  ...shopFields,
}));

/** Input of {@link reckonBlock}: `chart` (text, or rows of cells), `block`, `count`, `method`, `sheet`, `seam`, `fabricWidth`, … */
export type BlockInput = Input<typeof blockFields> &
  ListSurroundings & {
    /** What the block is called. */
    name?: unknown;
  };

/** The rows that it reckons. If there are several fabrics, each has its own row. */
export type BlockRow =
  | 'cell'
  | 'cellLength'
  | 'unfinished'
  | 'patches'
  | 'halvesOtherwise'
  | 'geeseOtherwise'
  | 'rowsOtherwise'
  | 'washedWidth'
  | ShopRow;

export type BlockLedger = Ledger<typeof blockFields, BlockRow | FabricRow>;

/** What it says. */
export interface BlockSayings
  extends ChartSayings, PieceSayings, PlannedSayings, SheetSayings, StripSetSayings {
  /** A patch would finish smaller than a mark of the ruler. */
  patchTooSmall: { patch: Size; mark: Exact };
  unlikeSkies: undefined;
  /** What the other method takes of each fabric. */
  halvesOtherWay: { way: Method['halves']; fabrics: FabricNeed[] };
  geeseOtherWay: { way: Method['geese']; fabrics: FabricNeed[] };
  rowsOtherWay: { way: Method['rows']; fabrics: FabricNeed[] };
  /** Strips were chosen, but some row is not made of equal patches, or is too long. */
  notOfStrips: undefined;
  summary: { name: string; count: number; block: Exact; says: Message };
  picture: { name: string; block: Exact; columns: number; rows: number };
  letter: { letter: string };
  /** The name of a cell of the chart. */
  cellName: { row: number; cell: number };
}

/** What a method takes of a fabric: inches of cloth, or sheets. */
export interface FabricNeed {
  fabric: string;
  need: Exact | Purchase;
}

export const say = sayings<BlockSayings>();

/** What one block has of one fabric. */
export interface BlockFabric {
  fabric: string;
  /** Pieces of it in one block. */
  pieces: number;
  /** What they cover in one finished block, in square inches. */
  area: Exact;
}

/** What {@link reckonBlock} gives back. */
export interface BlockAnswer extends Answer {
  /** How many blocks there are, and the finished side of one. */
  count: number;
  block: Exact;
  /** The same with its seam allowance. */
  unfinished: Exact;
  /** The cells of the chart. */
  columns: number;
  rows: number;
  /** The finished size of one cell. */
  cell: Size;
  /** Pieces of cloth in one block. */
  patches: number;
  /** What each fabric covers in one block. */
  letters: BlockFabric[];
  /** Cloth for each fabric, for all blocks. */
  fabrics: FabricPlan[];
  /** All sheets together, if fabrics are cut from sheets. */
  sheets?: number | undefined;
  week?: number | undefined;
  used: {
    cloth?: Cloth;
    chart: Chart;
    name: string;
    oneWay: boolean;
    kept: Exact;
    piecesOf: Making['piecesOf'];
  };
}
