import { sayInList } from '../ledger/listing.js';
import { asCut, leftoverCells } from './leftover-list.js';
import { say } from './sayings.js';
import { listLines } from './shopping.js';

/**
 * The shopping list, the cut list and what is left over, for a spreadsheet. Numbers stay numbers: a length in the reader's units, money without its
 * currency, the amount of what is bought. The unit of an amount has its own cell.
 */
const worksheetCells = (answer, notes, pieces, style) => [
    ...shoppingCells(answer),
    ...notes.map((note) => [note]),
    [],
    ...cutCells(asCut(pieces, answer)),
    [],
    ...leftoverCells(answer, style),
];
const shoppingCells = (answer) => {
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
        ...(total ? [[say('totalLine', { soFar: !!soFar }), ...Array(6), total]] : []),
    ];
};
const cutCells = (pieces) => [
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

export { worksheetCells };
