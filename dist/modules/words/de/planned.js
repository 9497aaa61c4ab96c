import { equals } from '../teller.js';
import { SHEET, so, PRICE } from './examples.js';

const PIECES = { one: 'Teil', other: 'Teile' };
/** What each kind of sheet is called. */
const SHEETS = {
    'fat-quarter': { one: 'Fat Quarter', other: 'Fat Quarters' },
    'fat-eighth': { one: 'Fat Eighth', other: 'Fat Eighths' },
    strip: { one: 'Streifen', other: 'Streifen' },
    square: { one: 'Quadrat', other: 'Quadrate' },
    sheet: { one: 'Stoffstück', other: 'Stoffstücke' },
};
const CUT_UP = { half: 'einmal diagonal geschnitten', quarter: 'zweimal diagonal geschnitten' };
/** How to write what a list is cut from. */
const SHEET_HINT = {
    in: 'eine eigene Größe als Maß wie 12 x 40, bei Muster mit Richtung die Breite zuerst',
    cm: 'eine eigene Größe als Maß wie 45 x 50, bei Muster mit Richtung die Breite zuerst',
};
/** What is said of a list that is planned, in German. */
const planned = {
    squareFor: ({ piece }, t) => `Quadrat für ${t.say(piece)}`,
    widthOfFabric: ({ fabric, says }, t) => `Breite von Stoff ${fabric}: ${t.say(says)}`,
    ofPiece: ({ piece, size, says }, t) => `${t.say(piece)}, ${t.size(size)}: ${t.say(says)}`,
    // What to cut and to buy.
    cutUp: ({ piece, kind }, t) => `Quadrat, ${CUT_UP[kind]}, für ${t.say(piece)}`,
    ofFabric: ({ fabric, piece }, t) => `${fabric} · ${t.say(piece)}`,
    fabricName: ({ fabric }) => (fabric ? `Stoff ${fabric}` : 'Stoff'),
    stripsAcross: ({ width, need, isLeast }, t) => `Streifen quer über ${t.l(width)} Stoffbreite: ${equals(t.formula(need), t.l(need))}${isLeast ? '; kein Plan für diese Teile braucht weniger' : '; mit weniger wurde kein Plan gefunden'}`,
    boughtEach: ({ fabrics, each }, t) => {
        const bought = fabrics.map(({ fabric, buy, size }) => `${fabric}${fabric && ': '}${t.bought(buy)}${size ? ` zu ${t.size(size)}` : ''}`);
        return `${bought.join('; ')}.${each ? ` Wir rechnen mit ${t.size(each.size)} je ${SHEETS[each.kind].one}.` : ''}`;
    },
    piecesFrom: ({ count, need, width }, t) => `${t.many(count, PIECES)} aus ${t.l(need)} Stoff, ${t.l(width)} breit.`,
    // What is worth saying.
    betweenMarks: ({ sizes, areMore }, t) => `Maße zwischen den Strichen des Lineals werden aufgerundet: ${sizes
        .map(({ written, cut }) => `${t.l(written)}, zugeschnitten ${t.l(cut)}`)
        .join('; ')}${areMore ? ' …' : '.'}`,
    caution: ({ text }) => text,
    // The drawing and the list.
    fabricHead: 'Stoff',
    noFabric: '–',
};
/** What is said only if it is cut from sheets, in German. */
const onSheets = {
    notSheet: ({ text }, t) => `${t.quote(text)} ist kein Stoffstück. Eines aus der Liste wählen oder ein Maß schreiben, zum Beispiel ${SHEET}.`,
    sheetOfNothing: `Die Seiten eines Stoffstücks sind größer als 0. Zum Beispiel ${SHEET}.`,
    sheets: ({ count, kind, size }, t) => t.many(count, SHEETS[kind]) + (size ? `, ${t.size(size)}` : ''),
    stripsOnSheets: ({ width, strips, room, isLeast }, t) => `Streifen, ${t.l(width)} lang: ${t.reckoned(strips)} ≤ ${equals(t.formula(room), t.l(room))}${isLeast ? '; kein Plan für diese Teile braucht weniger' : '; mit weniger wurde kein Plan gefunden'}`,
    otherPrice: (_, t) => `Der Preis galt für den vorherigen Stoff und zählt nicht mehr mit. Den Preis je yd, m oder Stoffstück neu eintragen, zum Beispiel ${so(PRICE, t)}.`,
    sheetOfFabric: ({ fabric, says }, t) => `So wird Stoff ${fabric} gekauft: ${t.say(says)}`,
    priceOfCloth: 'Dieser Preis gilt nur für die Meterware, nicht für die Stoffstücke.',
};

export { SHEETS, SHEET_HINT, onSheets, planned };
