import type { PATCHES } from '../../trade/patches.js';

/** What a column of a cut list holds. */
export type Column = 'count' | 'fabric' | 'size' | 'width' | 'length' | 'piece';

/** The kind of a piece. A triangle is cut from a square. */
export type PatchKind = keyof typeof PATCHES;

/** How authors of one language write their cut lists. */
interface ListWords {
  /** The words in the head of a column, the clearest ones first. */
  heads: [Column, RegExp][];
  /** The names of patches that are not rectangles. */
  kinds: [PatchKind, RegExp][];
  /** The word for a square. It is looked for in a name after `triangleNames` are removed. */
  square: RegExp;
  triangleNames: RegExp;
  /** The words that mark a finished size, which has no seam allowance yet. */
  finished: RegExp;
  /** The words in a name that say how a piece is cut. */
  ways: RegExp;
  /** Words that may be beside the numbers of a size. */
  besideSize: RegExp;
}

const ENGLISH: ListWords = {
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

const GERMAN: ListWords = {
  heads: [
    ['count', /anzahl|menge|wie ?viel|stückzahl|stueckzahl/i],
    ['fabric', /stoff|farbe|buchstabe/i],
    [
      'size',
      new RegExp(
        `^(?!.*(${DE_WIDTH}|${DE_LENGTH})).*(maß|mass|größe|groesse|abmessung)|${DE_WIDTH}.*(${DE_LENGTH})|(${DE_LENGTH}).*${DE_WIDTH}`,
        'i',
      ),
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
  besideSize:
    /\b((halb(e|es)?|viertel).?quadrat(e|en)?(.?dreiecke?n?)?|dreiecke?n?|quadrate?n?|(un)?fertig(e|es)?|(fertig|end)?(maß|mass)|zuschnitt|zugeschnitten|(mit|ohne|plus|inkl\.?|zzgl\.?) (nahtzugabe|nz)|breite?|lang|länge|hoch|höhe|groß)(?!\p{L})/giu,
};

/** The languages of a cut list. All are tried, German first, because short English words occur inside German ones. */
const LANGUAGES = [GERMAN, ENGLISH];

export const HEADS = LANGUAGES.flatMap(({ heads }) => heads);
const KINDS = LANGUAGES.flatMap(({ kinds }) => kinds);

/** The kind of patch that these words name. */
export const kindOf = (words: string): PatchKind =>
  KINDS.find(([, pattern]) => pattern.test(words))?.[0] ?? 'rectangle';

export const isFinished = (words: string): boolean => LANGUAGES.some(({ finished }) => finished.test(words));

/** Whether the list counts the squares, not the triangles that are cut from them. */
export const isOfSquares = (piece: string): boolean =>
  LANGUAGES.some(({ square, triangleNames }) => square.test(piece.replace(triangleNames, '')));

/** The name of a piece without the words that say how it is cut. */
export const bareName = (written: string): string =>
  LANGUAGES.reduce((text, { ways }) => text.replace(ways, ' '), written)
    .replace(/\s+/g, ' ')
    .trim();

/** A size without the words beside it. */
export const bareSize = (written: string): string =>
  LANGUAGES.reduce((text, { besideSize }) => text.replace(besideSize, ' '), written).trim();
