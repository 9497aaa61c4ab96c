import { sayInList, type ListCell } from '../ledger/listing.js';
import type { Message } from '../measure/message.js';
import type { Style } from '../measure/format.js';
import type { PieceOfPart } from './gather.js';
import { asCut, leftoverCells } from './leftover-list.js';
import { say } from './sayings.js';
import type { WorksheetAnswer } from './shape.js';
import { listLines } from './shopping.js';

/**
 * The shopping list, the cut list and what is left over, for a spreadsheet. Numbers stay numbers: a length in the reader's units, money without its
 * currency, the amount of what is bought. The unit of an amount has its own cell.
 */
export const worksheetCells = (
  answer: WorksheetAnswer,
  notes: Message[],
  pieces: PieceOfPart[],
  style: Style,
): ListCell[][] => [
  ...shoppingCells(answer),
  ...notes.map((note) => [note]),
  [],
  ...cutCells(asCut(pieces, answer)),
  [],
  ...leftoverCells(answer, style),
];

const shoppingCells = (answer: WorksheetAnswer): ListCell[][] => {
  const { total, soFar } = answer;
  return [
    [say('shoppingList')],
    [
      say('fabricHead'),
      say('nameHead'),
      say('forHead'),
      say('neededInHead'),
      sayInList('buyHead'),
      say('unitHead'),
      say('priceHead'),
      say('costHead'),
      say('boltsHead'),
      say('widthInHead'),
    ],
    ...listLines(answer).map(({ letter, name, uses, need, buy, text, price, cost, bolts, width }) => [
      letter,
      name,
      uses,
      need,
      buy ?? text,
      buy && say('unitOf', { buy }),
      price,
      cost,
      bolts,
      width,
    ]),
    ...(total ? [[say('totalLine', { soFar: !!soFar }), ...Array<undefined>(6), total]] : []),
  ];
};

const cutCells = (pieces: PieceOfPart[]): ListCell[][] => [
  [say('cutList')],
  [
    say('fabricHead'),
    say('nameHead'),
    say('forHead'),
    say('pieceHead'),
    say('countHead'),
    say('widthInHead'),
    say('lengthInHead'),
    say('cutSizeHead'),
  ],
  ...pieces.map(({ letter, name, title, cut: { piece, count, width, length } }) => [
    letter,
    name,
    title,
    piece,
    count,
    width,
    length,
    say('cutSize', { width, length }),
  ]),
];
