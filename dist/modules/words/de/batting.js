import { bed } from './bed.js';
import { PACKAGE, reaches } from './examples.js';

/** German shops print the English names too. */
const USUAL = {
    craft: 'Craft',
    crib: 'Crib',
    throw: 'Throw',
    twin: 'Twin',
    full: 'Full',
    queen: 'Queen',
    king: 'King',
};
const LIKE = `Zum Beispiel ${PACKAGE}.`;
const BUTTED = ', Kante an Kante ohne Überlappung';
const PACKAGES = { one: 'Packung', other: 'Packungen' };
/** `1 Packung Twin`; a package may have no name. */
const packages = (count, name, t) => {
    const called = typeof name === 'string' ? name : t.say(name);
    return [t.many(count, PACKAGES), called].filter(Boolean).join(' ');
};
/** The batting's words in German. */
const batting = {
    title: 'Vlies',
    labels: {
        ...bed.labels,
        needWidth: 'Vliesbreite',
        needLength: 'Vlieslänge',
        roll: 'Breite der Rolle',
        packages: 'Packungen',
        washed: 'Quilt nach dem Waschen, etwa',
        lengths: 'Bahnen von der Rolle',
        each: 'Länge jeder Bahn',
        price: 'Preis je yd oder m von der Rolle',
        fabric: 'Vliesbedarf',
    },
    hints: {
        ...bed.hints,
        roll: 'statt einer Packung',
        packages: 'leer für die üblichen Größen',
        shrinkage: 'Baumwollvlies 3 bis 5 %',
    },
    options: {
        ...bed.options,
    },
    entries: {},
    sentences: {
        ...bed.sentences,
        sizeForBed: 'Gerechnet wird die Größe für das Bett; eingetragene Breite und Länge gelten nicht.',
        eachSideWashed: ({ width, length, shrinkage }, t) => `${t.n(width)} und ${t.n(length)}, je × (1 − ${t.n(shrinkage)})`,
        batting: 'Vlies',
        // A list of packages.
        usualPackage: ({ size }) => USUAL[size],
        packageWidth: 'Breite',
        packageLength: 'Länge',
        packagePrice: 'Preis',
        notPackage: ({ text }, t) => `${t.quote(text)} ist keine Packung. ${LIKE}`,
        inPackage: ({ text, problem }, t) => `${t.quote(text)}: ${t.say(problem)}`,
        packageCount: ({ most }) => `Eine Liste hat 1 bis ${most} Packungen. ${LIKE}`,
        // One package.
        onePackage: ({ name }, t) => packages(1, name, t),
        packageToBuy: ({ count, ...pack }, t) => `${packages(count, pack.name, t)}, ${t.size(pack)}`,
        packageFits: ({ pack: { width, length, price }, across, along }, t) => `die ${price ? 'günstigste' : 'kleinste'}, die reicht: ${t.n(width)} ≥ ${t.n(across)} und ${t.n(length)} ≥ ${t.l(along)}`,
        bothWays: ({ beside, beyond }, t) => `${t.l(beside)} und ${t.l(beyond)}`,
        leftBothWays: ({ pack: { width, length }, across, along }, t) => `${t.n(width)} − ${t.n(across)} und ${t.n(length)} − ${t.n(along)}`,
        readLabel: (_, t) => `Vor dem Kauf das Etikett lesen: Die Größen der Hersteller weichen um einige ${t.style.units === 'cm' ? 'Zentimeter' : 'Zoll'} ab.`,
        spareOneWay: ({ spare }, t) => `In einer Richtung ist die Reserve nur ${t.l(spare)}: Fällt die Packung kleiner aus, reicht das Vlies nicht.`,
        packageSummary: ({ need, turned }, t) => `Gebraucht werden ${t.size(need)}: Eine Packung reicht${turned ? ', quer gelegt' : ''}.`,
        // From a roll.
        tooManyLengths: ({ roll, lengths }, t) => `Bei einer ${t.l(roll)} breiten Rolle wären ${lengths} Bahnen nötig. Eine breitere eintragen, zum Beispiel 240 cm.`,
        lengthsOfRoll: ({ roll }, t) => `Bahnen von der Rolle, ${t.l(roll)} breit`,
        lengthsReach: ({ reach, need, lengths }, t) => `${reaches(reach, need, t)}${lengths > 1 ? BUTTED : ''}`,
        eachLength: ({ side }) => `die ${side === 'width' ? 'Breite' : 'Länge'} des Vlieses`,
        noPackage: 'Keine Packung ist groß genug, deshalb wird von der Rolle gerechnet.',
        moreThanTwo: ({ lengths }) => `Zwei Bahnen sind nicht breit genug, deshalb liegen ${lengths} Kante an Kante.`,
        ofRoll: ({ bought, roll }, t) => `${t.bought(bought)}, ${t.l(roll)} breit`,
        lengthOfBatting: 'Bahn Vlies',
        rollSummary: ({ lengths, roll, need }, t) => `${lengths > 1 ? `${lengths} Bahnen` : 'Eine Bahn'} von einer ${t.l(roll)} breiten Rolle${lengths > 1 ? BUTTED : ''}, für ${t.size(need)}.`,
        // In the lists.
        plainPrice: ({ price }) => price.amount,
        shownPrice: ({ price }, t) => t.money(price),
        packageList: 'Packungen',
        packageHead: 'Packung',
        sizeHead: 'Größe',
        fitsHead: 'Reicht das?',
        fits: ({ fits, priceText }, t) => `${fits ? 'ja' : 'zu klein'}${priceText ? `, ${t.say(priceText)}` : ''}`,
        rollList: 'Von der Rolle',
        rollHead: 'Rolle',
        lengthsHead: 'Bahnen',
        lengthsToCut: ({ lengths, length }, t) => `${lengths > 1 ? `${lengths}, Kante an Kante, je ` : ''}${t.l(length)}`,
        // In the drawing.
        picture: ({ summary }, t) => `${t.say(summary)} Die gestrichelte Linie ist der Quilt; was außerhalb des getönten Vlieses liegt, bleibt übrig.`,
        quiltInPicture: 'Quilt',
    },
};

export { batting };
