import { bed } from './bed.js';

const USUAL = {
    craft: 'craft',
    crib: 'crib',
    throw: 'throw',
    twin: 'twin',
    full: 'full',
    queen: 'queen',
    king: 'king',
};
const LIKE = 'Write it like large 90 x 100 @ 29.';
const BUTTED = ', butted edge to edge with no overlap';
/** `1 twin package`; a package may have no name. */
const packages = (count, name, t) => {
    const said = typeof name === 'string' ? name : t.say(name);
    // A full package could be one that nobody has opened.
    const called = said === USUAL.full ? 'full-size' : said;
    const ofThat = (form) => [called, form].filter(Boolean).join(' ');
    return t.many(count, { one: ofThat('package'), other: ofThat('packages') });
};
/** The batting's words in English. */
const batting = {
    title: 'Batting',
    labels: {
        ...bed.labels,
        needWidth: 'Batting width',
        needLength: 'Batting length',
        roll: 'From a roll this wide',
        packages: 'Packages',
        washed: 'Quilt after a wash, about',
        lengths: 'Lengths of the roll',
        each: 'Each length',
        price: 'Price of a yard or metre from the roll',
        fabric: 'Batting needed',
    },
    hints: {
        ...bed.hints,
        roll: 'in place of a package',
        packages: 'the usual sizes where nothing is written',
        shrinkage: 'cotton batting 3 to 5 %',
    },
    options: {
        ...bed.options,
    },
    entries: {},
    sentences: {
        ...bed.sentences,
        sizeForBed: 'This is the size for the bed. We do not use the width and length that you gave.',
        eachSideWashed: ({ width, length, shrinkage }, t) => `${t.n(width)} and ${t.n(length)}, each × (1 − ${t.n(shrinkage)})`,
        batting: 'batting',
        // A list of packages.
        usualPackage: ({ size }) => USUAL[size],
        packageWidth: 'The width',
        packageLength: 'The length',
        packagePrice: 'The price',
        notPackage: ({ text }, t) => `${t.quote(text)} is not a package. ${LIKE}`,
        inPackage: ({ text, problem }, t) => `${t.quote(text)}: ${t.say(problem)}`,
        packageCount: ({ most }) => `A list has 1 to ${most} packages. ${LIKE}`,
        // One package.
        onePackage: ({ name }, t) => packages(1, name, t),
        packageToBuy: ({ count, ...pack }, t) => `${packages(count, pack.name, t)}, ${t.size(pack)}`,
        packageFits: ({ pack: { width, length, price }, across, along }, t) => `the ${price ? 'cheapest' : 'smallest'} that fits: ${t.n(width)} ≥ ${t.n(across)} and ${t.n(length)} ≥ ${t.l(along)}`,
        bothWays: ({ beside, beyond }, t) => `${t.l(beside)} and ${t.l(beyond)}`,
        leftBothWays: ({ pack: { width, length }, across, along }, t) => `${t.n(width)} − ${t.n(across)} and ${t.n(length)} − ${t.n(along)}`,
        readLabel: (_, t) => `Read the label before buying: makers’ sizes differ by a few ${t.style.units === 'cm' ? 'centimetres' : 'inches'}.`,
        spareOneWay: ({ spare }, t) => `Only ${t.l(spare)} to spare one way: a package smaller than its name says would leave you short.`,
        packageSummary: ({ need, turned }, t) => `You need ${t.size(need)}: one package is enough${turned ? ', turned' : ''}.`,
        // From a roll.
        tooManyLengths: ({ roll, lengths }, t) => `A roll ${t.l(roll)} wide takes ${lengths} lengths. Write a wider one, like ${t.usual({ in: '90 in', cm: '240 cm' })}.`,
        lengthsOfRoll: ({ roll }, t) => `Lengths of a roll ${t.l(roll)} wide`,
        lengthsReach: ({ reach, need, lengths }, t) => `${t.reckoned(reach)} ≥ ${t.l(need)}${lengths > 1 ? BUTTED : ''}`,
        eachLength: ({ side }) => `the batting’s ${side}`,
        noPackage: 'No package is large enough, so this is from a roll.',
        moreThanTwo: ({ lengths }) => `Two lengths are not wide enough, so you need ${lengths}, edge to edge.`,
        ofRoll: ({ bought, roll }, t) => `${t.bought(bought)}, ${t.l(roll)} wide`,
        lengthOfBatting: 'length of batting',
        rollSummary: ({ lengths, roll, need }, t) => `${lengths > 1 ? `${lengths} lengths` : 'One length'} of a roll ${t.l(roll)} wide${lengths > 1 ? BUTTED : ''}, for ${t.size(need)}.`,
        // In the lists.
        plainPrice: ({ price }) => price.amount,
        shownPrice: ({ price }, t) => t.money(price),
        packageList: 'Packages',
        packageHead: 'Package',
        sizeHead: 'Size',
        fitsHead: 'Big enough?',
        fits: ({ fits, priceText }, t) => `${fits ? 'yes' : 'too small'}${priceText ? `, ${t.say(priceText)}` : ''}`,
        rollList: 'From the roll',
        rollHead: 'Roll',
        lengthsHead: 'Lengths',
        lengthsToCut: ({ lengths, length }, t) => `${lengths > 1 ? `${lengths}, butted, each ` : ''}${t.l(length)}`,
        // In the drawing.
        picture: ({ summary }, t) => `${t.say(summary)} The broken line is the quilt; what lies outside the tinted batting is left over.`,
        quiltInPicture: 'quilt',
    },
};

export { batting };
