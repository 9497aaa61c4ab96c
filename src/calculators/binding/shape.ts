import type { Answer } from '../../ledger/answer.js';
import { clothFields, type Cloth } from '../../ledger/cloth.js';
import { joinField, markField } from '../../ledger/cuts.js';
import { inputsOf, optional } from '../../ledger/field.js';
import { choiceField } from '../../ledger/kinds.js';
import type { Input } from '../../ledger/ledger.js';
import { lengthField } from '../../ledger/lengths.js';
import type { Quantity, Stated } from '../../ledger/quantity.js';
import { quiltFields, type Size } from '../../ledger/quilt.js';
import { shopFields, type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { sayings, type Message } from '../../measure/message.js';
import { BINDING_ALLOWANCE, QUILT_THICKNESS, SEAM } from '../../trade/conventions.js';

export const bindingFields = /* @__PURE__ */ inputsOf(() => ({
  width: optional(quiltFields.width),
  length: optional(quiltFields.length),
  perimeter: optional(lengthField({ most: '4000 in', more: true })),
  allowance: lengthField({ initial: BINDING_ALLOWANCE, zero: true, most: '100 in' }),
  stripWidth: optional(lengthField()),
  finished: optional(lengthField({ most: '6 in', example: { in: ['3/8'], cm: ['1'] } })),
  fold: choiceField(['double', 'single']),
  thickness: lengthField({ initial: QUILT_THICKNESS, zero: true, most: '2 in', more: true }),
  ...clothFields,
  cut: choiceField(['straight', 'bias']),
  join: joinField,
  seam: lengthField({ initial: SEAM, most: '4 in', more: true }),
  ...markField,
  ...shopFields,
}));

/** Input of {@link reckonBinding}: `width`, `length`, `perimeter`, `allowance`, `stripWidth`, `finished`, `fold`, … */
export type BindingInput = Input<typeof bindingFields>;

/** The rows that it reckons. */
export type BindingRow =
  | 'around'
  | 'need'
  | 'strip'
  | 'washedWidth'
  | 'loss'
  | 'strips'
  | 'square'
  | 'rounds'
  | 'yields'
  | 'byArea'
  | 'fatStrips'
  | 'fatQuarters'
  | ShopRow;

export type Fold = 'double' | 'single';

/** What helps if a strip is too wide: wider cloth, a narrower strip, or a narrower finished width. */
export type Narrower = 'cloth' | 'strip' | 'finished';

/** What it says. */
export interface BindingSayings {
  asMeasured: { perimeter: Quantity };
  curvedEdge: undefined;
  /** A width between two marks of the ruler is cut on the upper one. */
  betweenMarks: { text: string; strip: Exact };
  upToMark: { stripWidth: Quantity; mark: Stated };
  usualWidth: undefined;
  /** The strip for a finished width, and how it is cut if that is between two marks. */
  cutOnMark: { whole: Quantity; cut: Exact };
  stripWidthUsed: undefined;
  stripTooWide: { strip: Exact; cloth: Exact; narrower: Narrower };
  noSquare: { strip: Exact; cloth: Exact; narrower: Narrower };
  joinLeavesNothing: { loss: Exact; cloth: Exact; write: 'straight' | 'smallerSeam' | 'widerCloth' };
  joinAtAngle: { strip: Quantity };
  /** How far the joined strips reach, and the length that is needed. */
  stripsReach: { reach: Quantity; need: Quantity };
  bindingStrip: undefined;
  summary: { strips: number; strip: Exact; isDiagonal: boolean; need: Exact; fold: Fold };
  /** Bias: the name of one of several squares, and how its side was found. */
  eachSquare: { count: number };
  leastSquare: { need: Quantity; strip: Quantity; seam: Quantity; tooNarrow: Exact | undefined };
  roundsFit: { across: Quantity; rounds: number; strip: Quantity };
  roundsGive: { all: Quantity; need: Quantity };
  byAreaAlone: { side: Quantity };
  biasSquare: undefined;
  biasSummary: { count: number; side: Exact; need: Exact; fold: Fold; strip: Exact };
  /** The same from fat quarters. */
  squareFromEach: { side: Exact; need: Quantity; strip: Quantity; seam: Quantity };
  stripsFromEach: { high: Quantity; strip: Quantity; each: number };
  notPossible: undefined;
  tooWideForFatQuarter: { strip: Quantity; size: Size };
  /** In the drawing. */
  picture: { summary: Message };
  biasPicture: { side: Exact };
  stripNumber: { number: number };
  stripCount: { count: number };
}

export const say = sayings<BindingSayings>();

/** What {@link reckonBinding} gives back. Lengths are exact inches. */
export interface BindingAnswer extends Answer {
  /** The binding needed: the distance round the quilt, and the allowance. */
  length: Exact;
  /** Strips to join: cut across the cloth, or the one long strip that each bias square gives. */
  strips: number;
  /** How wide each strip is cut. */
  stripWidth: Exact;
  /** How long the strips are after joining. For bias it is rounded down to a mark of the ruler. */
  yields: Exact;
  /** Bias: the side of each square. */
  square?: Exact;
  /** Bias: how many squares. */
  squares?: number;
  /** Bias: how many whole rounds each square's tube gives. */
  rounds?: number;
  /** Bias: the side by the usual rule, which looks at the area alone. The last round of its tube can be too narrow to use. */
  byArea?: Exact;
  /** The same binding from fat quarters: strips along the longer side, or a square from each for bias. Absent if nothing fits. */
  fatQuarters?: { strips: number; count: number } | undefined;
  /** `edge` is how wide it finishes on the front, at least 0. */
  used: { cloth: Cloth; isDiagonal: boolean; loss: Exact; edge: Exact };
}
