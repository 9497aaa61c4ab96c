import { isMessage } from '../../measure/message.js';
import { equals } from '../teller.js';
import { stepOf } from './common.js';
import { ranges } from '../ranges.js';
import { onSheets, SHEETS } from './planned.js';

const KITS = { one: 'kit', other: 'kits' };
const BLOCKS = { one: 'block', other: 'blocks' };
const BORDERS = { one: 'border', other: 'borders' };
const FABRICS = { one: 'fabric', other: 'fabrics' };
const BOLTS = { one: 'bolt', other: 'bolts' };
const LENGTHS = { one: 'length', other: 'lengths' };
const THINGS = { one: 'thing', other: 'things' };
/** What an author calls a block keeps its capital. */
const isName = ({ code, values }) => {
    const { says } = values;
    return code === 'saidBy' && isMessage(says) && says.code === 'ownWords';
};
/** A title inside a sentence. */
const inSentence = (title, t) => isName(title) ? t.say(title) : t.say(title).toLowerCase();
const and = (titles, t) => titles.map((title) => inSentence(title, t)).join(' and ');
const upperFirst = (text) => text.replace(/^./, (first) => first.toUpperCase());
const lowerFirst = (text) => text.replace(/^./, (first) => first.toLowerCase());
const soFarOr = (soFar) => (soFar ? ' so far' : '');
/** The worksheet's words in English. */
const worksheet = {
    title: 'Shopping list',
    labels: { seam: 'Seam allowance', kits: 'Kits', bolt: 'Cloth on a bolt' },
    hints: {
        width: 'where there is no quilt top to reckon it from',
        length: 'where there is no quilt top to reckon it from',
        fabricWidth: 'of every fabric that does not say its own',
        kits: 'for a shop: how many kits to cut',
        bolt: 'a kit’s cloth is never pieced from two bolts',
    },
    options: {},
    entries: {},
    sentences: {
        titleOf: ({ calculator }, t) => t.words.others?.[calculator]?.title ?? calculator,
        saidBy: ({ calculator, says }, t) => t.as(calculator).say(says),
        somePart: 'Part',
        something: 'something',
        // Lines.
        fabricOf: ({ letter }) => `Fabric ${letter}`,
        clothOf: ({ what, width }, t) => `${t.say(what)}${width ? `, ${t.l(width)} wide` : ''}`,
        clothNamed: ({ cloth, name }, t) => `${t.say(cloth)}, ${name}`,
        lengthFor: ({ cloth, titles }, t) => `${t.say(cloth)}, ${and(titles, t)}`,
        toBuy: ({ buy, width }, t) => `${t.bought(buy)}${width ? `, ${t.l(width)} wide` : ''}`,
        allOf: ({ buys }, t) => buys.map((buy) => t.bought(buy)).join(' and '),
        buyRow: 'Buy',
        needOfParts: ({ parts, added, together }, t) => {
            const [first] = parts;
            const each = parts.map(({ need, titles }) => `${t.n(need)} (${and(titles, t)})`).join(' + ');
            const sum = parts.length > 1 || !first ? equals(each, t.l(added)) : and(first.titles, t);
            if (!together)
                return sum;
            const enough = together.isEnough ? ', though what you buy is enough for each on its own' : '';
            return `${sum}; planned together ${t.l(together.need)}${enough}`;
        },
        upToSteps: ({ lengths, step, spare }, t) => {
            const each = lengths.map(({ need, titles }) => lengths.length > 1 ? `${t.n(need)} (${and(titles, t)})` : t.l(need));
            const upTo = `${each.join(' and ')},${lengths.length > 1 ? ' each' : ''} rounded up to the next`;
            return `${upTo} ${stepOf(t.stated(step))}; ${t.l(spare)} to spare`;
        },
        boltsRow: ({ kits }, t) => `Bolts for ${t.many(kits, KITS)}`,
        boltsOfOneKind: ({ kinds, bolt }, t) => {
            const each = kinds.map(({ each, buy }) => `${each} × ${t.bought(buy)}`).join(', or ');
            return `${each}, from each bolt of ${t.stated(bolt)}`;
        },
        boltsOfBoth: ({ each, buy, bolt }, t) => `${each} × ${t.bought(buy)} from each bolt of ${t.stated(bolt)}`,
        boltsOfLengths: ({ each, buy, bolt }, t) => `${t.many(each, LENGTHS)} of ${t.bought(buy)} from each bolt of ${t.stated(bolt)}; with ${t.bought(buy)} in one length for each kit, fewer bolts are not enough`,
        quarterBoltsRow: ({ cloth, kits }, t) => `${t.say(cloth)}: bolts for ${t.many(kits, KITS)}, if you cut the fat quarters yourself`,
        boltsOfQuarters: ({ quarters, forTwo, length, pairs, bolt }, t) => `${t.many(quarters, SHEETS['fat-quarter'])}, two from each ${t.l(forTwo)}: ${t.l(length)} in all; each bolt of ${t.stated(bolt)} gives ${2 * pairs}`,
        undeclared: ({ letter, titles }, t) => `${upperFirst(and(titles, t))} ${titles.length > 1 ? 'use' : 'uses'} fabric ${letter}, but the worksheet does not list it. Add fabric ${letter} to the worksheet.`,
        namesNone: ({ what, like }, t) => `${t.say(what)} names no fabric, so it has a line of its own. Give it fabric ${like}, or another.`,
        severalWidths: ({ what, widths, narrowest }, t) => `${t.say(what)} is cut from cloth of ${widths} widths, so each width has a line of its own. To buy one width, write it on each of these parts, like fabric-width="${t.typed(narrowest)}".`,
        twoLengths: ({ cloth, lengths, one }, t) => {
            const each = lengths.map(({ buy, titles }) => `${t.bought(buy)} for ${and(titles, t)}`);
            const all = lengths.flatMap(({ titles }) => titles).length > 2 ? 'all' : 'both';
            return `${t.say(cloth)}: buy two lengths, ${each.join(', and ')}. One length for ${all} would be ${t.bought(one)}.`;
        },
        planningTogether: ({ cloth }, t) => `${t.say(cloth)}: the layout is being planned, to see whether its parts fit together on less.`,
        weekOf: ({ week }) => `Week ${week}`,
        inWeek: ({ week, title }, t) => `Week ${week}: ${t.say(title)}`,
        anyPiece: ({ pieces }, t) => pieces.map((piece) => t.say(piece)).join(' or '),
        sheetsOfParts: ({ parts, alone, together }, t) => {
            const each = parts.map(({ title, sheets }) => `${sheets} (${inSentence(title, t)})`).join(' + ');
            return `${equals(each, `${alone}`)}${together < alone ? `; planned together ${together}` : ''}`;
        },
        sheets: onSheets.sheets,
        notSheet: onSheets.notSheet,
        sheetOfNothing: onSheets.sheetOfNothing,
        longerThanBolt: ({ cloth, buy, bolt, apart }, t) => {
            const each = apart.map(({ title, buy }) => `${t.bought(buy)} for ${inSentence(title, t)}`).join(', ');
            const orApart = each && `, or cut its parts as lengths of their own: ${each}`;
            return `${t.say(cloth)}: a kit’s ${t.bought(buy)} is longer than a bolt of ${t.stated(bolt)}. Write a longer bolt, like ${t.bought(buy)}${orApart}.`;
        },
        // Sums.
        priceOf: ({ what }, t) => `The price of ${t.say(what)}`,
        priceOfFabric: ({ letter }) => `fabric ${letter}`,
        priceOfPart: ({ title }, t) => inSentence(title, t),
        aPrice: 'A price',
        widthOfFabric: ({ letter }) => `The width of fabric ${letter}`,
        pricedInOther: ({ price, here }, t) => `“${t.money(price)}” is in ${price.currency?.toUpperCase() ?? ''}, but prices here are in ${here}. Write it in ${here}, like 12.50.`,
        noLetter: 'A fabric has no letter. Write letter="A".',
        sameLetter: ({ letter }) => `Two fabrics have the letter ${letter}; the first is used. Give the other a letter of its own.`,
        negativeCloth: 'cloth cannot be less than 0. Write it like 22 1/2.',
        noPieces: 'something cut from sheets needs its pieces, each with how many, like 12.',
        itemOf: ({ item, letter }, t) => `${t.say(item)} of fabric ${letter}`,
        unusedFabric: ({ letter, isNamed }) => `No part uses fabric ${letter}. ${isNamed ? 'The part that names it takes no cloth from it' : 'Give it to a part'}.`,
        leavesOut: ({ things }, t) => {
            const all = new Set(things.map((thing) => t.say(thing)));
            return `The total leaves out what has no price: ${[...all].join(', ')}.`;
        },
        totalRow: ({ isKit, soFar }) => `${isKit ? 'One kit' : 'Total'}${soFarOr(soFar)}`,
        sumOf: ({ costs }, t) => costs.map((cost) => t.money(cost)).join(' + '),
        kitsRow: ({ kits, soFar }) => `${kits > 1 ? `All ${kits} kits` : 'In whole bolts'}${soFarOr(soFar)}`,
        wholeBolts: ({ hasItems, each }, t) => `whole bolts${hasItems ? ', and the items of every kit' : ''}: ${t.money(each)} a kit`,
        summary: ({ fabrics, byLength, inBolts, items, isUnfinished }, t) => {
            const sold = inBolts ? ' in whole bolts' : byLength ? ' by length' : '';
            const cloth = fabrics ? [t.many(fabrics, FABRICS) + sold] : [];
            const [first, ...others] = [...cloth, ...items.map((item) => t.say(item))];
            const things = first && [first, ...others.map(lowerFirst)].join(', ');
            const nothing = `Nothing on the list yet${isUnfinished ? '' : ': put calculators inside this worksheet'}.`;
            const inAll = inBolts ? ' Whole bolts can hold more than the kits take.' : '';
            return things ? `${things}.${inAll}` : nothing;
        },
        // What is said of the parts and the fabrics.
        notYet: ({ title, isPlanning }, t) => `${t.say(title)} is not on the list yet: ${isPlanning ? 'it is still being planned' : 'something in it is wrong'}.`,
        readAsSeveral: ({ title, written, letters }, t) => `${t.say(title)}: fabric="${written}" is read as ${letters.length} fabrics, ${letters.join(' and ')}. If that is one name, add a fabric with the letter “${written}”.`,
        noSwatch: ({ letter, swatch }, t) => `The swatch of fabric ${letter}, ${t.quote(swatch)}, is neither a colour nor the address of a picture. Write it like #d9c7a3 or pictures/sand.png.`,
        moreOfBlock: ({ by, name, number }) => {
            const more = by > 0 ? `${by} more` : `${-by} fewer`;
            return name ? `${more} ${name}` : `${more} of block ${number}`;
        },
        // The picture of the whole quilt.
        quiltPicture: ({ size, blocks, places, borders, isBound }, t) => {
            const named = blocks.map(({ name, count }) => (name ? `${count} ${name}` : t.many(count, BLOCKS)));
            const all = [
                ...(named[0] || !places ? named : [t.many(places, BLOCKS)]),
                ...(borders ? [t.many(borders, BORDERS)] : []),
                ...(isBound ? ['binding'] : []),
            ];
            return `The whole quilt, ${t.size(size)}${all[0] ? `: ${all.join(', ')}` : ''}.`;
        },
        wholeQuilt: 'The whole quilt',
        showQuilt: 'Show the whole quilt',
        hideQuilt: 'Hide the whole quilt',
        saveSvg: 'Save the picture (SVG)',
        savePng: 'Save the picture (PNG)',
        cannotDraw: 'The part that draws the quilt did not load.',
        cannotSave: 'This browser does not let us save the picture here.',
        // The lists.
        shoppingList: 'Shopping list',
        sheetsByWeek: ({ kind, hasWeeks }) => `${upperFirst(SHEETS[kind].other)}, ${hasWeeks ? 'week by week' : 'part by part'}`,
        piecesHead: 'Pieces',
        atHandHead: 'At hand',
        atHandCell: ({ letter }) => `What you have of fabric ${letter}`,
        atHandOf: ({ letter }) => `What you have of fabric ${letter}`,
        notAtHand: ({ text }, t) => `${t.quote(text)} counts as nothing. Write it like ${t.forUnits({ in: '9 fat quarters, 1 1/2 yd, 9 x 40 in or 2 pieces of 9 x 40 in', cm: '9 fat quarters, 1.5 m, 20 x 100 cm or 2 pieces of 20 x 100 cm' })}.`,
        leftRow: 'Left to buy',
        ownFirst: 'planned anew, with your own cloth cut first',
        stillMissing: ({ text }, t) => `${t.say(text)} more`,
        youHaveEnough: 'You have enough',
        ownPiece: (size, t) => `your own piece, ${t.size(size)}`,
        fromLeftover: ({ letter, of, pieces }, t) => `from what ${of ? `the ${inSentence(of, t)}` : `fabric ${letter}`} leaves: ${pieces.map((size) => t.size(size)).join(' and ')}`,
        leftoversList: 'What is left over',
        leftoversFrom: ({ least }, t) => `What is left over: the largest pieces, at least ${t.l(least)} each way`,
        leftoversHead: 'Left over',
        leaves: ({ pieces }, t) => pieces.map((one) => `${one.count > 1 ? `${one.count} of ` : ''}${t.size(one)}`).join(', ') ||
            'nothing of that size',
        makesList: 'What your cloth makes',
        blockHead: 'Block',
        blocksHead: 'Blocks',
        runsOutHead: 'Runs out first',
        blocksOf: ({ blocks, of }) => `${blocks} of ${of}`,
        numbersHead: 'From number',
        newHead: 'New',
        piecesOfPart: ({ pieces }, t) => pieces.map((cut) => `${cut.count} × ${t.say(cut.piece)}, ${t.size(cut)}`).join('; '),
        sheetNumbers: ({ numbers }) => ranges(numbers),
        shoppingListOfKit: 'Shopping list for one kit',
        cutList: 'Cut list',
        cutFrom: ({ fabric }) => `Cut from ${fabric}`,
        fabricKey: 'Fabric key',
        allAmounts: ({ amounts }, t) => amounts.map((amount) => t.say(amount)).join(' and '),
        fabricHead: 'Fabric',
        nameHead: 'Name',
        forHead: 'For',
        neededHead: 'Needed',
        unitHead: 'Unit',
        priceHead: 'Price',
        costHead: 'Cost',
        boltsHead: 'Bolts',
        pieceHead: 'Piece',
        countHead: 'How many',
        cutSizeHead: 'Cut size',
        neededInHead: (_, t) => `Needed (${t.style.units})`,
        widthInHead: (_, t) => `Width (${t.style.units})`,
        lengthInHead: (_, t) => `Length (${t.style.units})`,
        forKitsHead: ({ kits }, t) => `For ${t.many(kits, KITS)}`,
        uses: ({ titles }, t) => titles.map((title) => inSentence(title, t)).join(', '),
        noPrice: 'no price',
        totalLine: ({ soFar }) => `Total${soFarOr(soFar)}`,
        bolts: ({ count }, t) => t.many(count, BOLTS),
        timesEach: ({ times, what }, t) => `${times} × ${t.say(what)}`,
        unitOf: ({ buy }, t) => t.unitOf(buy),
        cutSize: (size, t) => t.size(size),
        stripsTogether: 'Parts cut together: strips, from the top of the cloth',
        leadForKits: ({ kits, soFar }, t) => `For ${t.many(kits, KITS)}${soFar ? ', so far' : ''}`,
        leadTotal: ({ isKit, soFar }) => (soFar ? 'So far' : isKit ? 'One kit' : 'In all'),
        leadBuy: ({ soFar }) => (soFar ? 'Buy, so far' : 'Buy'),
        money: ({ money }, t) => t.money(money),
        things: ({ count }, t) => (count ? t.many(count, THINGS) : 'nothing'),
    },
};

export { worksheet };
