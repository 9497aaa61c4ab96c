import type { PATCHES } from '../../trade/patches.js';

/** What a column of a cut list holds. */
export type Column = 'count' | 'fabric' | 'size' | 'width' | 'length' | 'piece';

/** What a piece is cut as: a triangle is cut from a square. */
export type PatchKind = keyof typeof PATCHES;

/** How authors of one language write their cut lists. */
interface ListWords {
  /** What a column's head says, the plainest words first. */
  heads: [Column, RegExp][];
  /** What a patch is called that is no rectangle. */
  kinds: [PatchKind, RegExp][];
  /** A square that triangles are cut from, in a name that these were taken out of. */
  square: RegExp;
  triangleNames: RegExp;
  /** It is a finished size, which lacks its seam allowance. */
  finished: RegExp;
  /** What may stand beside the numbers of a size. */
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
  besideSize: /\b((half|quarter).?squares?|triangles?|squares?|(un)?finished|cut)\b|[():]|,(?!\d)/gi,
};

/** The languages that a list may be written in: all of them are tried. */
const LANGUAGES = [ENGLISH];

export const HEADS = LANGUAGES.flatMap(({ heads }) => heads);
const KINDS = LANGUAGES.flatMap(({ kinds }) => kinds);

/** What these words call a patch. */
export const kindOf = (words: string): PatchKind =>
  KINDS.find(([, pattern]) => pattern.test(words))?.[0] ?? 'rectangle';

export const isFinished = (words: string): boolean => LANGUAGES.some(({ finished }) => finished.test(words));

/** Whether triangles are counted by the squares that they are cut from. */
export const isOfSquares = (piece: string): boolean =>
  LANGUAGES.some(({ square, triangleNames }) => square.test(piece.replace(triangleNames, '')));

/** A written size without the words that may stand beside it. */
export const bareSize = (written: string): string =>
  LANGUAGES.reduce((text, { besideSize }) => text.replace(besideSize, ' '), written).trim();
