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
/** The languages that a list may be written in: all of them are tried. */
const LANGUAGES = [ENGLISH];
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
