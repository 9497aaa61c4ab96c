import { readSheet } from '../calculators/cutting/sheets.js';
import { readLength } from '../ledger/lengths.js';
import { unlessRefused, refuse } from '../ledger/refusal.js';
import { least, most, ONE } from '../measure/exact.js';
import { placesOf, splitSize } from '../measure/parse.js';
import { say } from './sayings.js';

/** Nobody has more. */
const MOST_PIECES = 500;
const NAMES = [
    ['fat-quarter', /^(fat[ -]?quarters?|fqs?|f\.q\.)$/i],
    ['fat-eighth', /^(fat[ -]?eighths?|f8s?)$/i],
];
/** More than one side each way, a sign of a sum, or a size in yards or metres. */
const MAY_BE_A_SUM = /[*()=]|(x|×|by)[^]*(x|×|by)|(x|×|by)[^]*(yd|yard|\bm\b|met|\d\s*m\b)/i;
/** Stands for a comma between two digits, which no number has where decimals have a point. */
const LOW_COMMA = '\u201a';
/** A number of pieces, and what each of them is: `3 fat quarters`, `2 pieces of 9 x 40 in`. */
const counted = (text) => {
    const [, number = '1', named = ''] = /^(\d{1,4})?\s*((?:fat|fq|f8|f\.q).*)$/i.exec(text) ??
        /^(\d{1,4})\s+(?:pieces?(?:\s+of)?|of|stücke?(?:\s+zu)?)\s+(.+)$/i.exec(text) ??
        [];
    return named ? { count: Number(number), what: named.trim() } : { count: 1, what: text };
};
/** One piece, or several equal ones. `width` is that of the fabric. Throws a `Refusal`. */
const readPiece = (text, width, style) => {
    const { count, what } = counted(text);
    const bad = () => refuse(say('notAtHand', { text: text.replaceAll(LOW_COMMA, ',') }));
    if (count < 1 || count > MOST_PIECES)
        return bad();
    const name = NAMES.find(([, written]) => written.test(what))?.[0];
    if (name) {
        const { kind, ...size } = readSheet(name, style, { oneWay: false, kept: ONE });
        return { kind, width: size.width, length: size.length, count };
    }
    // “2 x 9 x 40 in” and “2 x 1/2 yd” may mean a number of pieces or a sum. Read as a sum, cloth would be missing.
    if (MAY_BE_A_SUM.test(what))
        return bad();
    const sides = splitSize(what);
    // A number alone could be yards, inches or pieces.
    if (!sides && !/\p{N}\s*(["'”″]|\p{L})/u.test(what))
        return bad();
    const read = (side) => unlessRefused(() => readLength(side, style), bad);
    const [across, along] = sides ? [read(sides[0]), read(sides[1])] : [width, read(what)];
    if (least(across, along).lte(0))
        return bad();
    return sides
        ? { kind: 'sheet', width: across, length: along, count }
        : { kind: 'length', width, length: along, count };
};
/**
 * Reads what a reader has at hand of a fabric: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these. What cannot be read
 * counts as nothing, and is said.
 */
const readAtHand = (written, width, style) => {
    const problems = [];
    // Where decimals have a point, “1,5 yd” could be two things, and 5 yd would be too much.
    const clear = style.comma ? written : written.replace(/(\d),(\d)/g, `$1${LOW_COMMA}$2`);
    const pieces = placesOf(clear.replace(/\s+(and|und)\s+|\s*[&+]\s*/gi, '; '), style.comma)
        .filter(Boolean)
        .flatMap((text) => unlessRefused(() => [readPiece(text.replace(/^(an?|one|eine?n?)\s+/i, '1 '), width, style)], ({ problem }) => {
        problems.push(problem);
        return [];
    }));
    return { pieces, problems };
};
/** How a piece lies to be cut: its long side across, unless the print has one way up, or it is a length of cloth. */
const lyingFor = ({ kind, width, length }, oneWay) => oneWay || kind === 'length'
    ? { width, height: length }
    : { width: most(width, length), height: least(width, length) };

export { lyingFor, readAtHand };
