import { so } from './examples.js';

const PANEL = { one: 'Bahn', other: 'Bahnen' };
const SEAM = { one: 'Naht', other: 'Nähte' };
const PIECE = { one: 'Stück', other: 'Stücken' };
/** The backing's words in German. */
const backing = {
    title: 'Rückseite',
    labels: {
        needWidth: 'Breite der Rückseite',
        needLength: 'Länge der Rückseite',
        seam: 'Nahtzugabe zwischen den Bahnen',
        repeat: 'Rapport',
        oneWay: 'Muster mit Richtung',
        piecedStrip: 'Gestückelter Streifen erlaubt',
        panels: 'Bahnen nebeneinander',
        panel: 'Länge jeder Bahn',
        strip: 'Streifen, jedes Stück',
        stripCount: 'Stücke im Streifen',
    },
    hints: {
        repeat: '0, wenn nichts passen muss',
        oneWay: 'alle Motive zeigen in eine Richtung',
        piecedStrip: 'weniger Stoff, mehr Nähte',
    },
    options: {},
    entries: {},
    sentences: {
        seamsLeaveNothing: ({ seam, cloth, isSeam }, t) => `Zwei Nahtzugaben von ${t.l(seam)} lassen von ${t.l(cloth)} breitem Stoff nichts übrig. ${isSeam ? `Eine kleinere Nahtzugabe eintragen, zum Beispiel ${so('1,5 cm', t)}` : 'Breiteren Stoff eintragen, zum Beispiel 105 cm'}.`,
        tooManyPanels: ({ cloth, panels }, t) => `Bei ${t.l(cloth)} breitem Stoff wären ${panels} Bahnen nötig. Breiteren Stoff eintragen, zum Beispiel 105 cm.`,
        panelsReach: ({ reach, need, isShort }, t) => isShort
            ? `${t.reckoned(reach)} < ${t.l(need)}: ein Streifen ergänzt den Rest`
            : `${t.reckoned(reach)} ≥ ${t.l(need)}`,
        panelLength: ({ side }) => `die ${side === 'width' ? 'Breite' : 'Länge'} der Rückseite`,
        backingPanel: 'Bahn für die Rückseite',
        stripToJoin: 'Streifen, an den Enden zusammennähen',
        summary: ({ panels, seams, direction, strip, oneWay, need }, t) => {
            const made = `${panels === 1 ? 'Eine Bahn' : `${panels} Bahnen`}${strip ? ' und ein gestückelter Streifen' : ''}`;
            const running = direction === 'lengthwise' ? 'längs zum Quilt' : 'quer zum Quilt';
            const alone = direction === 'lengthwise' ? 'keine Naht' : 'keine Naht, die Länge des Quilts quer zum Stoff';
            const sewn = seams ? `${t.many(seams, SEAM)} ${running}` : alone;
            return `${made}, ${sewn}${oneWay ? ', passend zur Musterrichtung' : ''}, für eine Rückseite von ${t.size(need)}.`;
        },
        layouts: 'Möglichkeiten, die Bahnen zu legen',
        panelsHead: 'Bahnen',
        seamsHead: 'Nähte',
        layout: ({ panels, strip, seams, direction }, t) => `${t.many(panels, PANEL)}${strip ? ` und ein Streifen aus ${t.many(strip.count, PIECE)}` : ''}, ${seams === 0 ? 'Stoff' : 'Nähte'} ${direction === 'lengthwise' ? 'längs' : 'quer'}`,
        picture: ({ summary }, t) => `${t.say(summary)} Die gestrichelte Linie ist der Quilt.`,
        panelNumber: ({ number }) => `Bahn ${number}`,
        stripInPicture: 'Streifen',
        pieced: 'ein gestückelter Streifen',
    },
};

export { backing };
