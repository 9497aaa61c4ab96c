import type { BackingSayings } from '../../src/calculators/backing/shape.js';
import type { BindingSayings } from '../../src/calculators/binding/shape.js';
import type { BlockSayings } from '../../src/calculators/block/shape.js';
import type { BordersSayings } from '../../src/calculators/borders/shape.js';
import type { CalculatorName } from '../../src/calculators/calculator.js';
import type { CuttingSayings } from '../../src/calculators/cutting/shape.js';
import type { TopSayings } from '../../src/calculators/top/shape.js';
import { Purchase } from '../../src/ledger/purchase.js';
import { Quantity, Stated } from '../../src/ledger/quantity.js';
import type { CommonSayings } from '../../src/ledger/sayings.js';
import { exact } from '../../src/measure/exact.js';
import { Message } from '../../src/measure/message.js';
import type { WorksheetSayings } from '../../src/workbook/sayings.js';
import type { FaceSayings } from '../../src/words/face-sayings.js';
import type { SpreadsheetSayings } from '../../src/words/spreadsheet-sayings.js';

const buy = new Purchase(exact(9), exact(1, 4), 'yd');
const blocks = { count: 20, block: exact(12) };

/** Something for every sentence of the face to say. */
const FACE: FaceSayings = {
  buyLead: undefined,
  byItselfLead: undefined,
  notReckonedYet: { inputs: ['Quiltbreite', 'Überstand je Seite'], hasAnswer: true },
  announced: { lead: 'Kaufen', large: '3 m', cost: '' },
  overStock: { stock: '2 m', takes: buy, instead: { way: new Message('pieced', {}), buy } },
  wrongStock: { problem: new Message('twoNumbers', {}) },
  strayLock: { text: 'breit', names: ['mark', 'price'] },
  valueHead: undefined,
  howHead: undefined,
  showWorking: undefined,
  hideWorking: undefined,
  changeSettings: undefined,
  hideSettings: undefined,
  standingSettings: { settings: [{ label: 'Rapport', value: '3 cm' }], others: ['Einlauf'] },
  otherPictures: { count: 5 },
  takeAlong: undefined,
  oneMore: undefined,
  yourOwn: undefined,
  measured: undefined,
  putBack: { value: '12 cm' },
  takeAway: { label: 'Rand 2' },
  ofMyOwn: undefined,
  entryOf: { label: 'Ecken', number: 2 },
  fractionKeys: undefined,
  asFabrics: undefined,
  asFabricsHint: { hint: 'eine eigene Größe als Maß wie 12 x 40' },
  cutCaption: undefined,
  times: { count: 3 },
  cutterCaution: undefined,
  measureFirst: undefined,
  showInCentimetres: undefined,
  showInInches: undefined,
  copyTable: undefined,
  downloadCsv: undefined,
  downloadSpreadsheet: undefined,
  print: undefined,
  copied: undefined,
  cannotCopy: undefined,
  cannotLoad: undefined,
  rowHead: undefined,
  inchesHead: undefined,
  cutCell: { piece: new Message('backingPanel', {}) },
  fromWorksheet: undefined,
  fromFabric: { letter: 'A' },
  fromPart: { part: 'top' },
  fromSeveral: {
    first: new Message('fromWorksheet', {}),
    others: [
      { letter: 'B', width: exact(60) },
      { letter: 'C', width: 'x' },
    ],
  },
  noClothForBlocks: undefined,
  listForOtherBlocks: { now: blocks, written: { ...blocks, count: 1 } },
  blocksForOtherPlaces: { places: 24, made: 20, difference: 4 },
};

/** The same for a spreadsheet file. */
const SPREADSHEET: SpreadsheetSayings = {
  unitColumnHead: undefined,
  onPageHead: undefined,
  numberedRow: { label: 'Rand', number: 2 },
  cutCountHead: undefined,
  cutWidthHead: undefined,
  cutLengthHead: undefined,
  formulasFollow: undefined,
  notFollowed: undefined,
  tooLittleNow: undefined,
  toNextStep: { formula: '2 × 40', step: '10 cm' },
  toCoin: { formula: '3 × 12,50' },
};

const size = { width: exact(20), length: exact(18) };
const title = new Message('titleOf', { calculator: 'binding' });
const cloth = new Message('fabricOf', { letter: 'A' });
const bolt = new Stated('bolt', '15 yd');
const needed = new Quantity(exact(90), 'length');

/** The same for a calculator's sentences that are seldom said. */
export const SELDOM: readonly [CalculatorName, Record<string, object | undefined>][] = [
  ['backing', { ...FACE }],
  ['backing', { ...SPREADSHEET }],
  [
    'backing',
    {
      tooManyPanels: { cloth: exact(1), panels: 101 },
      roundedUp: { formula: '80 + 4', step: needed },
      roundedToMark: { formula: '80 + 4', step: needed },
      notWhole: { what: 'panels' },
      measuredLess: { what: 'washedWidth', measured: exact(30), reckoned: exact(40) },
      tooManySizes: { most: 200 },
      largerThanCloth: { cloth: exact(40) },
      washedWider: { width: exact(40) },
      ofCloth: { number: 2, says: new Message('tooLong', {}) },
      planning: { done: 0.42 },
      onlyToSpare: { spare: exact(1, 2), next: buy },
      nothingToSpare: { next: buy },
    } satisfies Partial<BackingSayings & CommonSayings>,
  ],
  [
    'binding',
    {
      joinLeavesNothing: { loss: exact(3), cloth: exact(2), write: 'smallerSeam' },
    } satisfies Partial<BindingSayings>,
  ],
  [
    'block',
    {
      ofPiece: { piece: new Message('square', {}), size, says: new Message('tooManyPieces', {}) },
      piecesFrom: { count: 12, need: exact(9), width: exact(40) },
      notPatch: { text: '?' },
      notSpan: { text: '0x2' },
      tooManyFabrics: { most: 30 },
      cellName: { row: 2, cell: 3 },
      widthOfFabric: { fabric: 'A', says: new Message('tooLong', {}) },
      sheetOfFabric: { fabric: 'A', says: new Message('tooLong', {}) },
      outside: { row: 4 },
      gap: { row: 2, column: 3 },
      gooseWay: { text: 'quer', ways: ['left', 'right'] },
      patchTooSmall: { patch: size, mark: exact(1, 8) },
      otherPrice: undefined,
    } satisfies Partial<BlockSayings>,
  ],
  [
    'borders',
    {
      seamsLeaveNothing: { measured: exact(1, 4), reckoned: exact(60) },
      mitredUneven: { side: exact(3), end: exact(4) },
      tooWideAlong: { number: 1, wide: exact(50), cloth: exact(40) },
      borderNumber: { number: 2 },
      reachedAlready: { borders: 2, size, larger: size },
    } satisfies Partial<BordersSayings>,
  ],
  [
    'cutting',
    {
      foldStrips: { reach: exact(24) },
      widthOfFabric: { fabric: 'A', says: new Message('tooLong', {}) },
      cellHead: { cell: 'width' },
      cellName: { row: 2, cell: 'count' },
      cutWay: { way: 'half-finished' },
      piecesFrom: { count: 12, need: exact(9), width: exact(40) },
      tooTallToFold: { height: exact(60) },
      tooManyLines: { most: 500 },
      otherPrice: undefined,
    } satisfies Partial<CuttingSayings>,
  ],
  [
    'top',
    {
      takeBlocks: { across: 5, down: 6 },
      difference: {
        over: { width: exact(2), length: exact(-6) },
        border: { side: exact(0), end: exact(3) },
      },
      littleTooLong: { length: exact(41), over: exact(1), saves: exact(5) },
      partTitle: { kind: 'triangles' },
    } satisfies Partial<TopSayings>,
  ],
  [
    'worksheet',
    {
      lengthFor: { cloth, titles: [title] },
      allOf: { buys: [buy, buy] },
      boltsOfOneKind: { kinds: [{ each: 3, buy }], bolt },
      boltsOfBoth: { each: 3, buy, bolt },
      boltsOfLengths: { each: 3, buy, bolt },
      quarterBoltsRow: { cloth, kits: 3 },
      boltsOfQuarters: { quarters: 27, forTwo: exact(18), length: exact(252), pairs: 24, bolt },
      twoLengths: { cloth, lengths: [{ buy, titles: [title] }], one: buy },
      planningTogether: { cloth },
      longerThanBolt: { cloth, buy, bolt, apart: [{ title, buy }] },
      cutFrom: { fabric: 'A · Sand' },
      allAmounts: { amounts: [cloth, cloth] },
      neededInHead: undefined,
      widthInHead: undefined,
      lengthInHead: undefined,
      unitOf: { buy },
      stillMissing: { text: cloth },
      blocksOf: { blocks: 3, of: 20 },
      sheetNumbers: { numbers: [1, 2, 3, 5] },
      ownPiece: size,
      notYet: { title, isPlanning: false },
      readAsSeveral: { title, written: 'A 1', letters: ['A', '1'] },
      cutSize: size,
    } satisfies Partial<WorksheetSayings>,
  ],
];
