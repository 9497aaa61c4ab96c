const STRIPS = { one: 'Streifen', other: 'Streifen' };
/** The hanging sleeve's words in German. */
const sleeve = {
    title: 'Tunnel zum Aufhängen',
    labels: {
        stripWidth: 'Streifen, Zuschnittbreite',
        short: 'Kürzer an jeder Seite',
        hem: 'Jeder Einschlag am Saum',
        label: 'Etikett, fertige Größe',
        labelWidth: 'Etikett, Zuschnittbreite',
        labelLength: 'Etikett, Zuschnittlänge',
        finished: 'Tunnel, fertige Länge',
        cutLength: 'Zuschnittlänge',
        depth: 'Tiefe, flach liegend',
        seam: 'Nahtzugabe',
        strips: 'Streifen quer zum Stoff',
    },
    hints: {
        stripWidth: {
            in: 'für kleine Quilts 6 1/2 in; Ausstellungen verlangen oft 9 in',
            cm: 'für kleine Quilts 16,5 cm; Ausstellungen verlangen oft 23 cm',
        },
        short: 'damit die Stange an beiden Enden herausschaut',
        hem: 'jedes Ende wird zweimal eingeschlagen',
        label: 'für die Rückseite des Quilts, zum Beispiel 10 x 15 cm',
        seam: 'der Ansatznähte, des Tunnels und rund um das Etikett',
    },
    options: {},
    entries: {},
    sentences: {
        tooNarrow: ({ width }, t) => `Ein Quilt von ${t.l(width)} Breite lässt keinen Platz für einen Tunnel. Einen breiteren Quilt schreiben, zum Beispiel 100 cm, oder weniger bei „Kürzer an jeder Seite“.`,
        seamsTakeAll: ({ strip }, t) => `Zwei Nähte lassen von einem Streifen von ${t.l(strip)} nichts übrig. Einen breiteren Streifen schreiben, zum Beispiel 22 cm.`,
        joinsTakeAll: ({ cloth }, t) => `Zwei Nähte lassen von Stoff mit ${t.l(cloth)} Breite nichts übrig. Breiteren Stoff schreiben, zum Beispiel 105 cm.`,
        stripsReach: ({ reach, need }, t) => `${t.reckoned(reach)} ≥ ${t.l(need)}`,
        labelTooWide: ({ most, room }, t) => `Dieses Etikett passt nicht auf ${t.l(most)}, das schmalere Maß von Stoff und Quilt. ${room.lt(2) ? 'Die Zelle leer lassen' : `Ein kleineres schreiben, zum Beispiel ${room.lt(6) ? '5 x 5 cm' : '10 x 15 cm'}`}.`,
        labelBeside: 'Das Etikett passt neben den Tunnel, ans Ende seines Streifens.',
        labelTitle: 'Etikett',
        labelPiece: 'Etikett',
        sleeveStrip: 'Tunnel',
        stripToJoin: 'Tunnelstreifen, aneinandergenäht',
        seeLeftover: 'Zuerst nachsehen, ob der Rest der Rückseite für den Tunnel reicht.',
        summary: ({ strips, finished, depth, label }, t) => `${t.many(strips, STRIPS)} für einen Tunnel, ${t.l(finished)} lang und ${t.l(depth)} tief${label ? `, und ein Etikett von ${t.size(label)}` : ''}.`,
        picture: ({ summary }, t) => `Die Oberkante des Quilts von hinten. ${t.say(summary)}`,
        sleeve: 'Tunnel',
        sleeveSide: ({ side }, t) => `Tunnel ${t.l(side)}`,
    },
};

export { sleeve };
