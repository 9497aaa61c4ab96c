import { listed } from './examples.js';

/** After „für“. */
const BLOCKS = { one: 'Block', other: 'Blöcke' };
const PLACES = { one: 'Platz', other: 'Plätze' };
const blocksOf = ({ count, block }, t) => `${t.many(count, BLOCKS)} zu ${t.typed(block)}`;
const FROM = {
    top: 'vom Quilttop',
    borders: 'von den Rändern',
};
/** The face's words in German. */
const face = {
    buyLead: 'Kaufen',
    byItselfLead: (_, t) => `${t.words.title} allein`,
    notReckonedYet: ({ inputs, hasAnswer }) => `${listed(inputs.map((input) => `„${input}“`))} zuerst berichtigen, dann wird ${hasAnswer ? 'neu ' : ''}gerechnet.`,
    announced: ({ lead, large, cost }) => `${[lead && `${lead}:`, large, cost].filter(Boolean).join(' ')}.`,
    overStock: ({ stock, takes, instead }, t) => `Vorrätig: ${stock}, gebraucht: ${t.bought(takes)}. ${instead
        ? `Möglich wäre stattdessen: ${t.say(instead.way)}, ${t.bought(instead.buy)}`
        : 'Ein kleineres Maß oder breiterer Stoff braucht weniger'}.`,
    wrongStock: ({ problem }, t) => `Vorrat, max: ${t.say(problem)}`,
    strayLock: ({ text, names }, t) => `${t.quote(text)} in lock ist hier keine Eingabe. Zum Beispiel ${names.join(' ')} schreiben.`,
    valueHead: 'Wert',
    howHead: 'So gerechnet',
    showWorking: 'Rechenweg zeigen',
    hideWorking: 'Rechenweg ausblenden',
    changeSettings: 'Einstellungen ändern',
    hideSettings: 'Einstellungen ausblenden',
    standingSettings: ({ settings, others }) => [
        ...settings.map(({ label, value }) => `${label}: ${value}`),
        ...(others[0] ? [`nicht angegeben: ${others.join('\u00a0· ')}`] : []),
    ].join('\u00a0· '),
    oneMore: 'weiterer Eintrag, falls nötig',
    yourOwn: 'eigener Wert',
    measured: 'gemessen',
    putBack: ({ value }) => `zurück auf ${value}`,
    takeAway: ({ label }) => `${label} entfernen`,
    ofMyOwn: 'eine eigene Größe',
    entryOf: ({ label, number }) => `${label}, ${number}`,
    fractionKeys: 'Tasten für Brüche',
    asFabrics: 'Ware wie beim Stoff angegeben',
    asFabricsHint: ({ hint }) => `die Stoffe geben es vor; hier lässt sich etwas anderes wählen; ${hint}`,
    cutCaption: 'Zuschneiden',
    times: ({ count }) => `${count} ×`,
    cutterCaution: 'Rollschneider: Klinge nach jedem Schnitt schließen, vom Körper weg schneiden, von Kindern fernhalten.',
    measureFirst: 'Die Mengen dienen der Planung: Stoff und Quilt vor dem Zuschneiden selbst nachmessen.',
    showInCentimetres: 'In Zentimetern zeigen',
    showInInches: 'In Zoll zeigen',
    otherPictures: ({ count }, t) => t.many(count, { one: 'weiteres Bild', other: 'weitere Bilder' }),
    takeAlong: 'Kopieren oder herunterladen',
    copyTable: 'Tabelle kopieren',
    downloadCsv: 'CSV herunterladen',
    downloadSpreadsheet: 'Tabellendatei herunterladen',
    print: 'Drucken',
    copied: 'Kopiert.',
    cannotLoad: 'Der Teil, der Tabellendateien schreibt, ließ sich nicht laden; die CSV-Datei enthält dieselben Zahlen.',
    cannotCopy: 'Dieser Browser erlaubt hier kein Kopieren; die CSV-Datei enthält dasselbe.',
    rowHead: 'Zeile',
    inchesHead: 'Zoll',
    cutCell: ({ piece }, t) => `Zuschneiden: ${t.say(piece)}`,
    // Where a value in a worksheet comes from, and what its blocks lack.
    fromWorksheet: 'vom Arbeitsblatt',
    fromFabric: ({ letter }) => `Stoff ${letter}`,
    fromPart: ({ part }) => FROM[part] ?? 'aus einem anderen Teil',
    fromSeveral: ({ first, others }, t) => {
        const also = others.map(({ letter, width }) => `Stoff ${letter}: ${typeof width === 'string' ? width : t.typed(width)}`);
        return [t.say(first), ...also].join('; ');
    },
    noClothForBlocks: 'Der Stoff für die Blöcke fehlt in dieser Liste. Einen Block mit seinem Raster ergänzen oder eine Zuschneideliste.',
    listForOtherBlocks: ({ now, written }, t) => `Der Stoff für ${blocksOf(now, t)} fehlt in dieser Liste: Die Zuschneideliste gilt für ${blocksOf(written, t)}. Bitte Anzahl und Maß der Teile dafür eintragen.`,
    blocksForOtherPlaces: ({ places, made, difference }, t) => `Das Top hat ${t.many(places, PLACES)}, die Blöcke sind ${made}. ${difference > 0
        ? `Von welchem Block sollen es ${difference} mehr sein?`
        : `Von welchem Block sollen es ${-difference} weniger sein?`}`,
};

export { face };
