import { onSheets, planned, SHEET_HINT } from './planned.js';
import { CUT_LINE, so } from './examples.js';

const CELLS = {
    fabric: 'Stoff',
    piece: 'Teil',
    width: 'Breite',
    length: 'Länge',
    count: 'Anzahl',
    way: 'Zuschnitt',
};
const WAYS = {
    rectangle: 'Quadrat oder Rechteck',
    'rectangle-finished': 'Rechteck, fertig',
    half: 'Halbquadrat-Dreiecke',
    'half-finished': 'Halbquadrate, fertig',
    quarter: 'Viertelquadrat-Dreiecke',
    'quarter-finished': 'Viertelquadrate, fertig',
};
const FOLDS = ['ungefaltet', 'einmal gefaltet, Webkante auf Webkante,', 'zweimal gefaltet, vierlagig,'];
/** The cutting plan's words in German. */
const cutting = {
    title: 'Zuschneideplan',
    labels: {
        list: 'Zuschneideliste',
        sheet: 'Zuschneiden aus',
        seam: 'Nahtzugabe',
        oneWay: 'Muster mit Richtung',
        ruler: 'Länge des Lineals',
        mat: 'Schneidematte',
        week: 'Woche',
        price: 'Preis je yd, m oder Stoffstück',
    },
    hints: {
        list: 'je Teil eine Zeile; ein Quadrat braucht keine Länge',
        sheet: SHEET_HINT,
        seam: 'fehlt einem fertigen Maß noch',
    },
    options: {},
    entries: {},
    sentences: {
        ...planned,
        ...onSheets,
        // The cut list.
        piece: ({ name }) => name || 'Teil',
        inLine: ({ number, piece, says }, t) => `Zeile ${number}${piece ? `, ${piece}` : ''}: ${t.say(says)}`,
        inColumn: ({ says }, t) => t.say(says),
        cellsTogether: `Ein | zwischen die Angaben setzen, zum Beispiel ${CUT_LINE}.`,
        sizeOfZero: ({ text }, t) => `${t.quote(text)}: Ein Maß muss mehr als 0 sein. Zum Beispiel 9 cm oder ${so('9 x 16,5 cm', t)}.`,
        noCount: ({ text }, t) => `${text ? `${t.quote(text)} ist keine Anzahl` : 'Die Anzahl fehlt'}. Zum Beispiel 12.`,
        countTooLarge: 'Das sind mehr als eine Million Teile. Weniger eintragen, zum Beispiel 1000.',
        emptyList: `Die Zuschneideliste ist leer. Eine Zeile schreiben, zum Beispiel ${CUT_LINE}.`,
        noSizeColumn: 'Der Zuschneideliste fehlt die Spalte für das Maß. Eine Spalte mit „Zuschnitt“ überschreiben.',
        noCountColumn: 'Der Zuschneideliste fehlt die Spalte für die Anzahl. Eine Spalte mit „Anzahl“ überschreiben.',
        tooManyLines: ({ most }) => `Mehr als ${most} Zeilen lassen sich nicht auf einmal planen. In Teilen planen, zum Beispiel je ${most / 2} Zeilen.`,
        noPiece: 'Die Zuschneideliste verlangt kein einziges Teil. Die Anzahl eintragen, zum Beispiel 12.',
        // Its cells.
        cellHead: ({ cell }) => CELLS[cell],
        cellName: ({ row, cell }) => `Zeile ${row}, ${CELLS[cell]}`,
        cutWay: ({ way }) => WAYS[way],
        // What is worth saying.
        foldAcross: ({ folds, reach }, t) => folds
            ? `Den Stoff für jeden Streifen ${FOLDS[folds] ?? ''} quer schneiden: So reicht ein Lineal von ${t.l(reach)} für den Schnitt.`
            : `Ein Lineal von ${t.l(reach)} reicht quer über den Stoff: Jeden Streifen ungefaltet schneiden.`,
        tooWideToFold: ({ width, reach }, t) => `Ein Schnitt über ${t.l(width)} passt auch vierlagig gefaltet nicht an Lineal und Matte von ${t.l(reach)}: Den Stoff zuerst schmaler schneiden.`,
        foldStrips: ({ reach }, t) => `Einen Streifen, der höher als ${t.l(reach)} ist, vor dem Abschneiden der Teile einmal falten, Ende auf Ende.`,
        tooTallToFold: ({ height }, t) => `Ein ${t.l(height)} hoher Streifen ist auch einmal gefaltet länger als das Lineal: anzeichnen und mit der Schere schneiden.`,
    },
};

export { cutting };
