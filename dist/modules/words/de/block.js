import { Purchase } from '../../ledger/purchase.js';
import { BLOCK } from './examples.js';
import { onSheets, planned, SHEET_HINT } from './planned.js';

const WAYS = { one: 'einzeln', two: 'je zwei', four: 'je vier', eight: 'je acht' };
const ROWS = { patches: 'Patch für Patch', strips: 'aus verbundenen Streifen' };
const PATCHES = 'A, oder A/B, A\\B, A/B/C/D, B A B, B in A';
/** What each fabric takes. */
const needs = (fabrics, t) => fabrics
    .map(({ fabric, need }) => `${fabric} ${need instanceof Purchase ? t.bought(need) : t.l(need)}`)
    .join(', ');
/** The block's words in German. */
const block = {
    title: 'Block',
    labels: {
        chart: 'Raster',
        block: 'Block, fertig',
        count: 'Anzahl Blöcke',
        method: 'Auf einmal genäht',
        sheet: 'Zuschneiden aus',
        oneWay: 'Muster mit Richtung',
        seam: 'Nahtzugabe',
        price: 'Preis je yd, m oder Stoffstück',
        week: 'Woche',
        cell: 'Ein Feld, fertig',
        cellLength: 'Ein Feld, fertige Höhe',
        unfinished: 'Block vor dem Einnähen',
        patches: 'Patches insgesamt',
        halvesOtherwise: 'Stoff bei der anderen Nähweise der Halbquadrate',
        geeseOtherwise: 'Stoff bei der anderen Nähweise der Gänse',
        rowsOtherwise: 'Stoff bei der anderen Nähweise der Reihen',
    },
    hints: {
        chart: 'A/B oder A\\B: Halbquadrate. B\u00a0A\u00a0B\u00a02x1: eine Gans auf zwei Feldern, die nach oben fliegt. Mit „down“ dahinter fliegt sie nach unten. B\u00a0in\u00a0A: ein Quadrat aus B, auf der Spitze, in einem aus A',
        count: 'so viele von diesem Block',
        method: 'Dreiecke und Gänse, die zusammen entstehen, oder Reihen gleicher Patches aus Streifen',
        sheet: SHEET_HINT,
    },
    options: {
        method: {
            'two-one': '2 Dreiecke, 1 Gans',
            'two-four': '2 Dreiecke, 4 Gänse',
            'eight-one': '8 Dreiecke, 1 Gans',
            'eight-four': '8 Dreiecke, 4 Gänse',
            strips: 'gleiche Patches aus Streifen',
        },
    },
    entries: {},
    sentences: {
        ...planned,
        ...onSheets,
        // The chart.
        emptyChart: 'Das Raster ist leer. Reihen von Stoffbuchstaben schreiben, zum Beispiel A B A; B A B; A B A.',
        inCell: ({ row, cell, says }, t) => `Reihe ${row}, Patch ${cell}: ${t.say(says)}`,
        marksNeeded: 'Eine Reihe mit einer Größe braucht | zwischen ihren Patches, zum Beispiel B A B 2x1 | A.',
        tooManyCells: ({ most }) => `Ein Raster hat höchstens ${most} Felder in jeder Richtung. Den Block in größeren Feldern zeichnen, zum Beispiel 12 mal 12.`,
        tooManyFabrics: ({ most }) => `Ein Raster hat höchstens ${most} Stoffe. Weniger Buchstaben nehmen, zum Beispiel A bis H.`,
        emptyCell: 'Dieser Patch hat keinen Buchstaben. Den Buchstaben des Stoffs schreiben, zum Beispiel A.',
        notPatch: ({ text }, t) => `${t.quote(text)} ist kein Patch. Zum Beispiel ${PATCHES}.`,
        notSpan: ({ text }, t) => `${t.quote(text)} ist keine Anzahl von Feldern. Zum Beispiel 2.`,
        outside: ({ row }) => `Dieser Patch reicht bis Reihe ${row}, aber das Raster endet davor. Eine kleinere rowspan schreiben, zum Beispiel 1, oder Reihen anfügen.`,
        overlaps: 'Dieser Patch liegt über einem, der aus der Reihe darüber kommt. Eine kleinere colspan schreiben, zum Beispiel 1.',
        gap: ({ row, column }) => `Reihe ${row} hat in Spalte ${column} keinen Patch. Allen Reihen gleich viele Felder geben, zum Beispiel 3.`,
        halfNotSquare: 'Halbquadrate brauchen einen quadratischen Patch. Für einen einzigen Stoff A schreiben, oder den Patch über gleich viele Spalten und Reihen legen, zum Beispiel 2 mal 2.',
        quarterNotSquare: 'Viertelquadrate brauchen einen quadratischen Patch. Für einen einzigen Stoff A schreiben, oder den Patch über gleich viele Spalten und Reihen legen, zum Beispiel 2 mal 2.',
        insideNotSquare: 'Ein Quadrat im Quadrat braucht einen quadratischen Patch. Für einen einzigen Stoff A schreiben, oder den Patch über gleich viele Spalten und Reihen legen, zum Beispiel 2 mal 2.',
        gooseNotTwoByOne: 'Eine fliegende Gans ist doppelt so lang wie hoch. Ihren Patch über zwei Felder nebeneinander legen, mit colspan="2", oder 2x1 hinter ihre Buchstaben schreiben.',
        gooseWay: ({ text, ways }, t) => `${text ? `${t.quote(text)} ist keine Richtung, in die diese Gans fliegen kann` : 'Es fehlt, wohin diese Gans fliegt'}. In ihr Feld goose="${ways[0] ?? ''}" oder goose="${ways[1] ?? ''}" schreiben, oder das Wort hinter ihre Buchstaben.`,
        patchTooSmall: ({ patch, mark }, t) => `Ein Patch wäre fertig ${t.size(patch)} groß, zu klein zum Zuschneiden: Die Striche des Lineals liegen ${t.l(mark)} auseinander. Einen größeren Block schreiben, zum Beispiel ${t.usual({ in: '12 in', cm: '30 cm' })}.`,
        // What is cut.
        square: 'Quadrat',
        rectangle: 'Rechteck',
        pairSquareTwo: 'Quadrat für Halbquadrate, je zwei',
        pairSquareEight: 'Quadrat für Halbquadrate, je acht',
        quarterTriangles: 'Viertelquadrat-Dreiecke',
        gooseRectangle: 'Rechteck für eine fliegende Gans',
        skyCorner: 'Quadrat für die Ecke einer Gans',
        gooseSquare: 'Quadrat für fliegende Gänse, je vier',
        skySquare: 'Himmelsquadrat für fliegende Gänse, je vier',
        middleSquare: 'Quadrat der Mitte, auf der Spitze',
        rowStrip: 'Streifen, zum Zusammennähen und Querschneiden',
        cornerTriangles: 'Eckdreiecke um ein Quadrat',
        // What is worth saying.
        unlikeSkies: 'Gänse mit zwei verschiedenen Stoffen daneben werden einzeln genäht: Je vier wäre die Hälfte spiegelverkehrt.',
        halvesOtherWay: ({ way, fabrics }, t) => `${WAYS[way]}: ${needs(fabrics, t)}`,
        rowsOtherWay: ({ way, fabrics }, t) => `${ROWS[way]}: ${needs(fabrics, t)}`,
        notOfStrips: 'Dieser Block besteht nicht aus Reihen gleicher Patches, oder eine Reihe ist länger als die Stoffbreite. Darum ohne Streifen gerechnet.',
        geeseOtherWay: ({ way, fabrics }, t) => `${WAYS[way]}: ${needs(fabrics, t)}`,
        summary: ({ name, count, block, says }, t) => `${name && `${name}: `}${t.many(count, BLOCK)} zu ${t.l(block)}.${count ? ` ${t.say(says)}` : ''}`,
        picture: ({ name, block, columns, rows }, t) => `${name || 'Der Block'}, fertig ${t.l(block)}: ${columns} mal ${rows} Felder.`,
        letter: ({ letter }) => letter,
        cellName: ({ row, cell }) => `Reihe ${row}, Patch ${cell}`,
    },
};

export { block };
