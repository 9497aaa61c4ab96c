/** The words of a spreadsheet file in German. */
const spreadsheet = {
    unitColumnHead: 'Einheit',
    onPageHead: 'Rechnung auf der Seite',
    numberedRow: ({ label, number }) => `${label}, ${number}`,
    cutCountHead: 'Anzahl',
    cutWidthHead: (_, t) => `Breite (${t.style.units})`,
    cutLengthHead: (_, t) => `Länge (${t.style.units})`,
    formulasFollow: 'Zellen mit einer Formel folgen allem, was hier geändert wird. Alles andere wurde auf der Seite für diese Zahlen gefunden: Anzahl der Streifen und Bahnen, Pläne, Auswahl und Zuschnittmaße. Um das zu ändern, auf der Seite neu rechnen.',
    notFollowed: 'auf der Seite ändern, hier rechnet keine Formel damit',
    tooLittleNow: 'Reicht für diese Zahlen nicht mehr. Auf der Seite neu rechnen.',
    toNextStep: ({ formula, step }) => `${formula}, aufgerundet auf volle ${step}`,
    toCoin: ({ formula }) => `${formula}, auf die kleinste Münze gerundet`,
};

export { spreadsheet };
