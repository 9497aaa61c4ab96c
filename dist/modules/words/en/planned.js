import { equals } from '../teller.js';

const PIECES = { one: 'piece', other: 'pieces' };
/** What each kind of sheet is called. */
const SHEETS = {
    'fat-quarter': { one: 'fat quarter', other: 'fat quarters' },
    'fat-eighth': { one: 'fat eighth', other: 'fat eighths' },
    strip: { one: 'strip', other: 'strips' },
    square: { one: 'square', other: 'squares' },
    sheet: { one: 'sheet', other: 'sheets' },
};
const CUT_UP = { half: 'cut once on the diagonal', quarter: 'cut twice on the diagonal' };
/** How to write what a list is cut from. */
const SHEET_HINT = {
    in: 'a size of your own is written like 12 x 40, width first on a one-way print',
    cm: 'a size of your own is written like 45 x 50, width first on a one-way print',
};
/** What is said of a list that is planned, in English. */
const planned = {
    squareFor: ({ piece }, t) => `square for ${t.say(piece)}`,
    widthOfFabric: ({ fabric, says }, t) => `The width of fabric ${fabric}: ${t.say(says)}`,
    ofPiece: ({ piece, size, says }, t) => `${t.say(piece)}, ${t.size(size)}: ${t.say(says)}`,
    // What to cut and to buy.
    cutUp: ({ piece, kind }, t) => `square, ${CUT_UP[kind]}, for ${t.say(piece)}`,
    ofFabric: ({ fabric, piece }, t) => `${fabric} · ${t.say(piece)}`,
    fabricName: ({ fabric }) => (fabric ? `Fabric ${fabric}` : 'Cloth'),
    stripsAcross: ({ width, need, isLeast }, t) => `strips across cloth of ${t.l(width)}: ${equals(t.formula(need), t.l(need))}${isLeast ? '; no plan for these pieces takes less' : '; we found no layout with less'}`,
    boughtEach: ({ fabrics, each }, t) => {
        const bought = fabrics.map(({ fabric, buy, size }) => `${fabric}${fabric && ': '}${t.bought(buy)}${size ? ` of ${t.size(size)}` : ''}`);
        return `${bought.join('; ')}.${each ? ` We count on ${t.size(each.size)} of each ${SHEETS[each.kind].one}.` : ''}`;
    },
    piecesFrom: ({ count, need, width }, t) => `${t.many(count, PIECES)} from ${t.l(need)} of cloth ${t.l(width)} wide.`,
    // What is worth saying.
    betweenMarks: ({ sizes, areMore }, t) => `These sizes are between two marks of the ruler, so cut them on a mark: ${sizes
        .map(({ written, cut }) => `${t.l(written)}, cut ${t.l(cut)}`)
        .join('; ')}${areMore ? ' …' : '.'}`,
    caution: ({ text }) => text,
    // The drawing and the list.
    fabricHead: 'Fabric',
    noFabric: '–',
};
/** What is said only if it is cut from sheets, in English. */
const onSheets = {
    notSheet: ({ text }, t) => `${t.quote(text)} is not a sheet of cloth. Choose one from the list, or write a size like 12 x 40.`,
    sheetOfNothing: 'A sheet’s sides are more than 0. Write it like 12 x 40.',
    sheets: ({ count, kind, size }, t) => t.many(count, SHEETS[kind]) + (size ? `, ${t.size(size)}` : ''),
    stripsOnSheets: ({ width, strips, room, isLeast }, t) => `strips ${t.l(width)} long: ${t.reckoned(strips)} ≤ ${equals(t.formula(room), t.l(room))}${isLeast ? '; fewer are not enough' : '; we found no layout with fewer'}`,
    otherPrice: 'You cut this from something else now, so we left the old price out. Write what a yard, a metre or a sheet costs, like 12.50.',
    sheetOfFabric: ({ fabric, says }, t) => `What fabric ${fabric} is bought in: ${t.say(says)}`,
    priceOfCloth: 'This price is only for the cloth that you buy by length, not for the sheets.',
};

export { SHEETS, SHEET_HINT, onSheets, planned };
