import type { SheetSayings } from '../calculators/cutting/plan-shape.js';
import type { Cut, Money, Purchase } from '../ledger/purchase.js';
import type { Quantity, Stated } from '../ledger/quantity.js';
import type { Size } from '../ledger/quilt.js';
import type { Exact } from '../measure/exact.js';
import { sayings, type Message } from '../measure/message.js';
import type { SheetKind } from '../trade/cloths.js';
import type { Leftover } from './shape.js';

/** The cloth for a part, or for several parts that are cut from one length. */
interface NeedOf {
  need: Quantity;
  titles: Message[];
}

/** What the lines of the list say. */
interface LineSayings {
  /** What a calculator is called, in its own words: `Binding`. */
  titleOf: { calculator: string };
  /** Something that a calculator says, in its own words. */
  saidBy: { calculator: string; says: Message };
  /** A part without a title, and an item without a word. */
  somePart: undefined;
  something: undefined;
  fabricOf: { letter: string };
  /** A cloth of the list, with its width if the line has to say it. */
  clothOf: { what: Message; width: Exact | undefined };
  /** The same with the fabric's name. */
  clothNamed: { cloth: Message; name: string };
  /** A length of that cloth for some of its parts. */
  lengthFor: { cloth: Message; titles: Message[] };
  /** What to buy, with its width if the line has to say it. */
  toBuy: { buy: Purchase; width: Exact | undefined };
  /** Several lengths to buy. */
  allOf: { buys: Purchase[] };
  buyRow: undefined;
  /** How the need was got from those of its parts; `together` is less, and `isEnough` where what is bought does for each by itself. */
  needOfParts: { parts: NeedOf[]; added: Exact; together: { need: Exact; isEnough: boolean } | undefined };
  upToSteps: { lengths: NeedOf[]; step: Stated; spare: Exact };
  boltsRow: { kits: number };
  /** How many lengths a bolt gives. There are two kinds if a kit buys two lengths. */
  boltsOfOneKind: { kinds: { each: number; buy: Purchase }[]; bolt: Stated };
  boltsOfBoth: { each: number; buy: Purchase; bolt: Stated };
  boltsOfLengths: { each: number; buy: Purchase; bolt: Stated };
  /** The same for fat quarters that the shop cuts itself: how many, the length for two of them, and for all. A bolt gives `pairs`. */
  quarterBoltsRow: { cloth: Message; kits: number };
  boltsOfQuarters: { quarters: number; forTwo: Exact; length: Exact; pairs: number; bolt: Stated };
  undeclared: { letter: string; titles: Message[] };
  namesNone: { what: Message; like: string };
  severalWidths: { what: Message; widths: number; narrowest: Exact };
  twoLengths: { cloth: Message; lengths: { buy: Purchase; titles: Message[] }[]; one: Purchase };
  planningTogether: { cloth: Message };
  /** A part that is named by its week, and one that has a name too. */
  weekOf: { week: number };
  inWeek: { week: number; title: Message };
  /** A piece that several parts want, by the names that they give it. */
  anyPiece: { pieces: Message[] };
  /** How many sheets each part takes by itself, and all together. */
  sheetsOfParts: { parts: { title: Message; sheets: number }[]; alone: number; together: number };
  /** The list of what each part cuts from which sheets. `kind` if all sheets are of one kind. */
  sheetsByWeek: { kind: SheetKind; hasWeeks: boolean };
  piecesHead: undefined;
  numbersHead: undefined;
  atHandHead: undefined;
  /** The cell for what the reader has of a fabric. */
  atHandCell: { letter: string };
  atHandOf: { letter: string };
  notAtHand: { text: string };
  /** What is left to buy after own cloth is cut. */
  leftRow: undefined;
  ownFirst: undefined;
  stillMissing: { text: Message };
  youHaveEnough: undefined;
  /** A piece of own cloth, in a drawing. */
  ownPiece: { width: Exact; length: Exact };
  /** A part that is cut from what others leave: from these pieces, of a part with this title or else of this fabric. */
  fromLeftover: { letter: string; of: Message | undefined; pieces: Size[] };
  leftoversList: undefined;
  /** The same as a caption, with the shorter side of the smallest piece that it names. */
  leftoversFrom: { least: Exact };
  leftoversHead: undefined;
  /** What a line of the list leaves. It may be nothing. */
  leaves: { pieces: Leftover[] };
  makesList: undefined;
  blockHead: undefined;
  blocksHead: undefined;
  runsOutHead: undefined;
  blocksOf: { blocks: number; of: number };
  newHead: undefined;
  piecesOfPart: { pieces: Cut[] };
  sheetNumbers: { numbers: number[] };
  /** `apart` has a length for each part, if a bolt holds each of them. */
  longerThanBolt: {
    cloth: Message;
    buy: Purchase;
    bolt: Stated;
    apart: { title: Message; buy: Purchase }[];
  };
}

/** What the sums say. */
interface SumSayings {
  priceOf: { what: Message };
  priceOfFabric: { letter: string };
  priceOfPart: { title: Message };
  aPrice: undefined;
  widthOfFabric: { letter: string };
  /** A price that a part reckons with in another currency. */
  pricedInOther: { price: Money; here: string };
  noLetter: undefined;
  sameLetter: { letter: string };
  negativeCloth: undefined;
  noPieces: undefined;
  itemOf: { item: Message; letter: string };
  unusedFabric: { letter: string; isNamed: boolean };
  leavesOut: { things: Message[] };
  totalRow: { isKit: boolean; soFar: boolean };
  sumOf: { costs: Money[] };
  kitsRow: { kits: number; soFar: boolean };
  wholeBolts: { hasItems: boolean; each: Money };
  summary: { fabrics: number; byLength: boolean; inBolts: boolean; items: Message[]; isUnfinished: boolean };
}

/** What the worksheet says of its parts and its fabrics. */
interface GatherSayings {
  notYet: { title: Message; isPlanning: boolean };
  readAsSeveral: { title: Message; written: string; letters: string[] };
  noSwatch: { letter: string; swatch: string };
  /** More of a block, or fewer if it is below 0: its name or, without one, its number. */
  moreOfBlock: { by: number; name: string; number: number };
}

/** What the picture of the whole quilt says. */
interface QuiltSayings {
  /** What it shows, for someone who cannot see it. Without blocks of their own, the places of the top are blocks. */
  quiltPicture: {
    size: Size;
    blocks: { name: string; count: number }[];
    places: number;
    borders: number;
    isBound: boolean;
  };
  wholeQuilt: undefined;
  showQuilt: undefined;
  hideQuilt: undefined;
  saveSvg: undefined;
  savePng: undefined;
  cannotSave: undefined;
  cannotDraw: undefined;
}

/** The shopping list and the cut list, as they are shown and as cells. */
interface ListSayings {
  shoppingList: undefined;
  shoppingListOfKit: undefined;
  cutList: undefined;
  cutFrom: { fabric: string };
  fabricKey: undefined;
  allAmounts: { amounts: Message[] };
  fabricHead: undefined;
  nameHead: undefined;
  forHead: undefined;
  neededHead: undefined;
  unitHead: undefined;
  priceHead: undefined;
  costHead: undefined;
  boltsHead: undefined;
  pieceHead: undefined;
  countHead: undefined;
  cutSizeHead: undefined;
  /** Heads of columns of lengths, with their unit. */
  neededInHead: undefined;
  widthInHead: undefined;
  lengthInHead: undefined;
  forKitsHead: { kits: number };
  uses: { titles: Message[] };
  noPrice: undefined;
  totalLine: { soFar: boolean };
  bolts: { count: number };
  timesEach: { times: number; what: Message };
  /** What an amount is counted in. */
  unitOf: { buy: Purchase };
  cutSize: { width: Exact; length: Exact };
  stripsTogether: undefined;
  /** The large type, and the words before it. */
  leadForKits: { kits: number; soFar: boolean };
  leadTotal: { isKit: boolean; soFar: boolean };
  leadBuy: { soFar: boolean };
  money: { money: Money };
  things: { count: number };
}

/** What the worksheet may say. */
export interface WorksheetSayings
  extends
    LineSayings,
    SumSayings,
    GatherSayings,
    QuiltSayings,
    ListSayings,
    Pick<SheetSayings, 'sheets' | 'notSheet' | 'sheetOfNothing'> {}

export const say = sayings<WorksheetSayings>();
