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
    besideSize: /\b((half|quarter).?squares?|triangles?|squares?|(un)?finished|cut)\b|[():]|,(?!\d)/gi,
};
/** A side's word within a longer one: Zuschnittbreite, Länge. */
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
    // What is "fertig zugeschnitten" is as it is cut.
    finished: /\bfertig(?! ?zu)|endmaß|endmass|\b(ohne|plus|zzgl\.?) (nahtzugabe|nz\b)/i,
    besideSize: /\b((halb(e|es)?|viertel).?quadrat(e|en)?(.?dreiecke?n?)?|dreiecke?n?|quadrate?n?|(un)?fertig(e|es)?|(fertig|end)?(maß|mass)|zuschnitt|zugeschnitten|(mit|ohne|plus|inkl\.?|zzgl\.?) (nahtzugabe|nz)|breite?|lang|länge|hoch|höhe|groß)(?!\p{L})/giu,
};
/** The languages that a list may be written in: all are tried. English words are short enough to stand in German ones. */
const LANGUAGES = [GERMAN, ENGLISH];
const HEADS = LANGUAGES.flatMap(({ heads }) => heads);
const KINDS = LANGUAGES.flatMap(({ kinds }) => kinds);
/** What these words call a patch. */
const kindOf = (words) => KINDS.find(([, pattern]) => pattern.test(words))?.[0] ?? 'rectangle';
const isFinished = (words) => LANGUAGES.some(({ finished }) => finished.test(words));
/** Whether triangles are counted by the squares that they are cut from. */
const isOfSquares = (piece) => LANGUAGES.some(({ square, triangleNames }) => square.test(piece.replace(triangleNames, '')));
/** A written size without the words that may stand beside it. */
const bareSize = (written) => LANGUAGES.reduce((text, { besideSize }) => text.replace(besideSize, ' '), written).trim();

export { HEADS, bareSize, isFinished, isOfSquares, kindOf };
