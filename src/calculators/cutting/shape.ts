import type { Answer } from '../../ledger/answer.js';
import { clothFields, type Cloth } from '../../ledger/cloth.js';
import { markField } from '../../ledger/cuts.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { countField, flagField, sheetField } from '../../ledger/kinds.js';
import type { Input, Ledger } from '../../ledger/ledger.js';
import { lengthField, sizeField } from '../../ledger/lengths.js';
import { shopFields, type ShopRow } from '../../ledger/shop.js';
import type { LaidPiece } from '../../ledger/strips.js';
import type { Exact } from '../../measure/exact.js';
import { sayings } from '../../measure/message.js';
import { SEAM } from '../../trade/conventions.js';
import { MAT, RULER } from '../../trade/patches.js';
import type { CutCell, CutWay } from './cut-cells.js';
import { cutListInUnit, writeCutList, type CutListSayings } from './cut-list.js';
import type { FabricPlan, FabricRow, ListSurroundings, PlannedSayings, SheetSayings } from './plan-shape.js';

export const cuttingFields = /* @__PURE__ */ inputsOf(() => ({
  list: optional<unknown>({
    kind: 'own',
    lines: true,
    read: (raw) => raw,
    write: writeCutList,
    marked: cutListInUnit,
  }),
  sheet: sheetField(),
  ...clothFields,
  seam: lengthField({ initial: SEAM, zero: true, most: '2 in', more: true }),
  oneWay: flagField(),
  ruler: lengthField({ initial: RULER, most: '120 in', more: true }),
  mat: sizeField({ initial: MAT, more: true }),
  ...markField,
  week: optional(countField(520), { more: true }),
  ...shopFields,
}));

/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields> & ListSurroundings;

/** The rows that it reckons. If there are several fabrics, or sheets, each has its own row. */
export type CuttingRow = 'washedWidth' | ShopRow;

export type CuttingLedger = Ledger<typeof cuttingFields, CuttingRow | FabricRow>;

/** What it says. */
export interface CuttingSayings extends CutListSayings, PlannedSayings, SheetSayings {
  /** How often to fold the cloth, so that a cut across it fits a ruler and mat of this length. */
  foldAcross: { folds: number; reach: Exact };
  tooWideToFold: { width: Exact; reach: Exact };
  foldStrips: { reach: Exact };
  tooTallToFold: { height: Exact };
  /** The list as cells: the head of a column, the name of a cell, how a piece is cut. */
  cellHead: { cell: CutCell };
  cellName: { row: number; cell: CutCell };
  cutWay: { way: CutWay };
}

export const say = sayings<CuttingSayings>();

/** What {@link reckonCutting} gives back. */
export interface CuttingAnswer extends Answer {
  /** All sheets together, if fabrics are cut from sheets. */
  sheets?: number | undefined;
  /** The first fabric's layout. */
  layout: LaidPiece[];
  fabrics: FabricPlan[];
  /** The week of a sew-along in which it is cut. */
  week?: number | undefined;
  used: { cloth?: Cloth; oneWay: boolean };
}
