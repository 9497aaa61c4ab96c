import type { Answer } from '../../ledger/answer.js';
import { inputsOf } from '../../ledger/field.js';
import { clothFields, type Cloth } from '../../ledger/cloth.js';
import { flagField } from '../../ledger/kinds.js';
import type { Input } from '../../ledger/ledger.js';
import { lengthField } from '../../ledger/lengths.js';
import type { Purchase } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import { overageField, quiltFields, type Size } from '../../ledger/quilt.js';
import { shopFields, type ShopRow } from '../../ledger/shop.js';
import type { Exact } from '../../measure/exact.js';
import { sayings, type Message } from '../../measure/message.js';
import { BACKING_SEAM } from '../../trade/conventions.js';

export const backingFields = /* @__PURE__ */ inputsOf(() => ({
  ...quiltFields,
  overage: overageField,
  ...clothFields,
  seam: lengthField({ initial: BACKING_SEAM, zero: true, most: '4 in' }),
  repeat: lengthField({ initial: '0', zero: true, most: '60 in', more: true }),
  oneWay: flagField(),
  piecedStrip: flagField({ more: true }),
  ...shopFields,
}));

/** Input of {@link reckonBacking}: `width`, `length`, `overage`, `fabricWidth`, `seam`, `repeat`, `oneWay`, … */
export type BackingInput = Input<typeof backingFields>;

/** The rows that it reckons. */
export type BackingRow =
  'needWidth' | 'needLength' | 'washedWidth' | 'panels' | 'panel' | 'strip' | 'stripCount' | ShopRow;

/** What it says. */
export interface BackingSayings {
  seamsLeaveNothing: { seam: Exact; cloth: Exact; isSeam: boolean };
  tooManyPanels: { cloth: Exact; panels: number };
  /** How far the panels reach, and the width that is needed. If they are too short, a strip makes up the rest. */
  panelsReach: { reach: Quantity; need: Quantity; isShort: boolean };
  panelLength: { side: 'width' | 'length'; from: Quantity };
  backingPanel: undefined;
  stripToJoin: undefined;
  summary: Pick<BackingLayout, 'panels' | 'seams' | 'direction'> & {
    strip: boolean;
    oneWay: boolean;
    need: Size;
  };
  /** A layout in the list of layouts, and the heads of that list. */
  layout: BackingLayout;
  layouts: undefined;
  panelsHead: undefined;
  seamsHead: undefined;
  /** In the drawing. */
  picture: { summary: Message };
  panelNumber: { number: number };
  stripInPicture: undefined;
  /** A way that uses less cloth. */
  pieced: undefined;
}

export const say = sayings<BackingSayings>();

/** One way to make the back. Lengths are exact inches. */
export interface BackingLayout {
  /** Whole panels, side by side. */
  panels: number;
  /** `lengthwise`: the cloth's length, and the long seams, run along the quilt's length; `crosswise`: across it. */
  direction: 'lengthwise' | 'crosswise';
  /** All seams to sew, with the joins of the strip. */
  seams: number;
  /** How long each panel is cut, along the cloth. */
  panelLength: Exact;
  /** The strips that make up the missing width, joined end to end; only in a layout with a pieced strip. */
  strip?: { count: number; height: Exact } | undefined;
  /** How wide the joined panels are, before trimming. */
  cover: Exact;
  fabric: Exact;
  buy: Purchase;
}

/** What {@link reckonBacking} gives back. */
export interface BackingAnswer extends Answer {
  /** The back's size before quilting. */
  need: Size;
  /** Every layout that is possible, the one to use first. */
  layouts: BackingLayout[];
  /** The largest piece left over, from the side of the last panel. Absent if nothing is left. */
  leftover?: Size | undefined;
  used: { cloth: Cloth; seam: Exact; quilt: Size };
}
