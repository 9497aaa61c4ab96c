const ENGLISH = {
    heads: [
        ['count', /how many|number|count|quantity|qty|^no\.?$|^#$/i],
        ['fabric', /fabric|cloth|colou?r|letter/i],
        ['size', /^(?!.*(wid|long|length|height)).*(size|dimension)|wid.*(length|height)|(length|height).*wid/i],
        ['length', /length|height|long|down/i],
        ['width', /wid|across/i],
        ['size', /measure|^cut$/i],
        ['count', /pieces|^cut$/i],
        ['piece', /piece|patch|unit|shape/i],
        ['piece', /part|name|what|for/i],
    ],
    kinds: [
        ['quarter', /quarter.?square|\bqst/i],
        ['half', /half.?square|\bhst/i],
    ],
    square: /square/i,
    triangleNames: /(half|quarter).?square/gi,
    finished: /\bfinished\b/i,
    ways: /\b((half|quarter).?squares?(.?triangles?)?|[hq]sts?|finished)\b/gi,
    besideSize: /\b((half|quarter).?squares?|triangles?|squares?|(un)?finished|cut)\b|[():]|,(?!\d)/gi,
};
/** The German words for a side are often part of a longer word: Zuschnittbreite. */
const DE_WIDTH = 'breit';
const DE_LENGTH = 'läng|laeng|lang|höhe|hoehe|hoch';
const GERMAN = {
    heads: [
        ['count', /anzahl|menge|wie ?viel|stückzahl|stueckzahl/i],
        ['fabric', /stoff|farbe|buchstabe/i],
        [
            'size',
            new RegExp(`^(?!.*(${DE_WIDTH}|${DE_LENGTH})).*(maß|mass|größe|groesse|abmessung)|${DE_WIDTH}.*(${DE_LENGTH})|(${DE_LENGTH}).*${DE_WIDTH}`, 'i'),
        ],
        ['length', new RegExp(DE_LENGTH, 'i')],
        ['width', new RegExp(DE_WIDTH, 'i')],
        ['size', /zuschnitt|zugeschnitten/i],
        ['piece', /^(teil|patch|form$|bezeichnung)/i],
        ['count', /^(stück|stueck|stk\.?|st\.|zahl)$/i],
        ['piece', /teil|stück|stueck|patch|benennung|wofür|wofuer/i],
    ],
    kinds: [
        ['quarter', /viertel.?quadrat/i],
        ['half', /halb(e|es)?.?quadrat/i],
    ],
    square: /quadrat/i,
    triangleNames: /(halb(e|es)?|viertel).?quadrat/gi,
    // "fertig zugeschnitten" is a cut size.
    finished: /\bfertig(?! ?zu)|endmaß|endmass|\b(ohne|plus|zzgl\.?) (nahtzugabe|nz\b)/i,
    ways: /\b((halb(e|es)?|viertel).?quadrat(e|en)?(.?dreiecke?n?)?|fertig(e|es)?|endma(ß|ss)|(ohne|plus|zzgl\.?) (nahtzugabe|nz))(?!\p{L})/giu,
    besideSize: /\b((halb(e|es)?|viertel).?quadrat(e|en)?(.?dreiecke?n?)?|dreiecke?n?|quadrate?n?|(un)?fertig(e|es)?|(fertig|end)?(maß|mass)|zuschnitt|zugeschnitten|(mit|ohne|plus|inkl\.?|zzgl\.?) (nahtzugabe|nz)|breite?|lang|länge|hoch|höhe|groß)(?!\p{L})/giu,
};
/** The languages of a cut list. All are tried, German first, because short English words occur inside German ones. */
const LANGUAGES = [GERMAN, ENGLISH];
const HEADS = LANGUAGES.flatMap(({ heads }) => heads);
const KINDS = LANGUAGES.flatMap(({ kinds }) => kinds);
/** The kind of patch that these words name. */
const kindOf = (words) => KINDS.find(([, pattern]) => pattern.test(words))?.[0] ?? 'rectangle';
const isFinished = (words) => LANGUAGES.some(({ finished }) => finished.test(words));
/** Whether the list counts the squares, not the triangles that are cut from them. */
const isOfSquares = (piece) => LANGUAGES.some(({ square, triangleNames }) => square.test(piece.replace(triangleNames, '')));
/** The name of a piece without the words that say how it is cut. */
const bareName = (written) => LANGUAGES.reduce((text, { ways }) => text.replace(ways, ' '), written)
    .replace(/\s+/g, ' ')
    .trim();
/** A size without the words beside it. */
const bareSize = (written) => LANGUAGES.reduce((text, { besideSize }) => text.replace(besideSize, ' '), written).trim();

export { HEADS, bareName, bareSize, isFinished, isOfSquares, kindOf };
