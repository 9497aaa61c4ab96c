import { equals } from '../teller.js';
import { ranges } from '../ranges.js';
import { SHEETS, onSheets } from './planned.js';
import { listed, so, upTo, PRICE } from './examples.js';

const KITS = { one: 'Materialpackung', other: 'Materialpackungen' };
const BLOCKS = { one: 'Block', other: 'Blöcke' };
const BORDERS = { one: 'Rand', other: 'Ränder' };
const FABRICS = { one: 'Stoff', other: 'Stoffe' };
const BOLTS = { one: 'Ballen', other: 'Ballen' };
const LENGTHS = { one: 'Abschnitt', other: 'Abschnitte' };
const THINGS = { one: 'Posten', other: 'Posten' };
const and = (titles, t) => listed(titles.map((title) => t.say(title)));
const soFarOr = (soFar) => (soFar ? ' bisher' : '');
/** The worksheet's words in German. */
const worksheet = {
    title: 'Einkaufsliste',
    labels: { seam: 'Nahtzugabe', kits: 'Materialpackungen', bolt: 'Stoff auf einem Ballen' },
    hints: {
        width: 'wenn kein Quilttop sie ergibt',
        length: 'wenn kein Quilttop sie ergibt',
        fabricWidth: 'jedes Stoffes ohne eigene Breite',
        kits: 'für den Laden: wie viele Packungen er zuschneidet',
        bolt: 'der Stoff einer Packung kommt nie von zwei Ballen',
    },
    options: {},
    entries: {},
    sentences: {
        titleOf: ({ calculator }, t) => t.words.others?.[calculator]?.title ?? calculator,
        saidBy: ({ calculator, says }, t) => t.as(calculator).say(says),
        somePart: 'Teil',
        something: 'etwas',
        // Lines.
        fabricOf: ({ letter }) => `Stoff ${letter}`,
        clothOf: ({ what, width }, t) => `${t.say(what)}${width ? `, ${t.l(width)} breit` : ''}`,
        clothNamed: ({ cloth, name }, t) => `${t.say(cloth)}, ${name}`,
        lengthFor: ({ cloth, titles }, t) => `${t.say(cloth)}, ${and(titles, t)}`,
        toBuy: ({ buy, width }, t) => `${t.bought(buy)}${width ? `, ${t.l(width)} breit` : ''}`,
        allOf: ({ buys }, t) => listed(buys.map((buy) => t.bought(buy))),
        buyRow: 'Kaufen',
        needOfParts: ({ parts, added, together }, t) => {
            const [first] = parts;
            const each = parts.map(({ need, titles }) => `${t.n(need)} (${and(titles, t)})`).join(' + ');
            const sum = parts.length > 1 || !first ? equals(each, t.l(added)) : and(first.titles, t);
            if (!together)
                return sum;
            const enough = together.isEnough ? ', die gekaufte Menge reicht aber auch für jedes allein' : '';
            return `${sum}; zusammen geplant ${t.l(together.need)}${enough}`;
        },
        upToSteps: ({ lengths, step, spare }, t) => {
            const each = lengths.map(({ need, titles }) => lengths.length > 1 ? `${t.n(need)} (${and(titles, t)})` : t.l(need));
            return `${listed(each)},${lengths.length > 1 ? ' je' : ''} ${upTo(step, t)}; Reserve: ${t.l(spare)}`;
        },
        boltsRow: ({ kits }, t) => `Ballen für ${t.many(kits, KITS)}`,
        boltsOfOneKind: ({ kinds, bolt }, t) => {
            const each = kinds.map(({ each, buy }) => `${each} × ${t.bought(buy)}`).join(' oder ');
            return `${each} von jedem Ballen zu ${t.stated(bolt)}`;
        },
        boltsOfBoth: ({ each, buy, bolt }, t) => `${each} × ${t.bought(buy)} von jedem Ballen zu ${t.stated(bolt)}`,
        boltsOfLengths: ({ each, buy, bolt }, t) => `${t.many(each, LENGTHS)} zu ${t.bought(buy)} von jedem Ballen zu ${t.stated(bolt)}; bei ${t.bought(buy)} am Stück je Packung reichen weniger Ballen nicht`,
        quarterBoltsRow: ({ cloth, kits }, t) => `${t.say(cloth)}: Ballen für ${t.many(kits, KITS)}, wenn die Fat Quarters selbst geschnitten werden`,
        boltsOfQuarters: ({ quarters, forTwo, length, pairs, bolt }, t) => `${t.many(quarters, SHEETS['fat-quarter'])}, zwei aus je ${t.l(forTwo)}: zusammen ${t.l(length)}; jeder Ballen zu ${t.stated(bolt)} gibt ${2 * pairs}`,
        undeclared: ({ letter, titles }, t) => `Stoff ${letter} wird gebraucht (${and(titles, t)}), ist aber nicht angelegt. Bitte <quilt-fabric letter="${letter}"> einfügen.`,
        namesNone: ({ what, like }, t) => `${t.say(what)}: nennt keinen Stoff und hat deshalb eine eigene Zeile. Bitte dort Stoff ${like} oder einen anderen angeben.`,
        severalWidths: ({ what, widths, narrowest }, t) => `${t.say(what)}: Der Stoff hat ${widths} verschiedene Breiten, deshalb steht jede in einer eigenen Zeile. Für eine einzige Breite sie bei jedem dieser Teile schreiben, zum Beispiel fabric-width="${t.typed(narrowest)}".`,
        twoLengths: ({ cloth, lengths, one }, t) => {
            const each = lengths.map(({ buy, titles }) => `${t.bought(buy)} für ${and(titles, t)}`);
            const all = lengths.flatMap(({ titles }) => titles).length > 2 ? 'alles' : 'beides';
            return `${t.say(cloth)}: zwei Abschnitte kaufen, ${each.join('; ')}. Ein Abschnitt für ${all} wäre ${t.bought(one)}.`;
        },
        planningTogether: ({ cloth }, t) => `${t.say(cloth)}: Der Plan entsteht gerade; er zeigt, ob die Teile zusammen auf weniger Stoff passen.`,
        weekOf: ({ week }) => `Woche ${week}`,
        inWeek: ({ week, title }, t) => `Woche ${week}: ${t.say(title)}`,
        anyPiece: ({ pieces }, t) => pieces.map((piece) => t.say(piece)).join(' oder '),
        sheetsOfParts: ({ parts, alone, together }, t) => {
            const each = parts.map(({ title, sheets }) => `${sheets} (${t.say(title)})`).join(' + ');
            return `${equals(each, `${alone}`)}${together < alone ? `; zusammen geplant ${together}` : ''}`;
        },
        sheets: onSheets.sheets,
        notSheet: onSheets.notSheet,
        sheetOfNothing: onSheets.sheetOfNothing,
        longerThanBolt: ({ cloth, buy, bolt, apart }, t) => {
            const each = apart.map(({ title, buy }) => `${t.bought(buy)} für ${t.say(title)}`).join(', ');
            const orApart = each && `, oder die Teile als eigene Abschnitte zuschneiden: ${each}`;
            return `${t.say(cloth)}: ${t.bought(buy)} je Packung sind länger als ein Ballen von ${t.stated(bolt)}. Einen längeren Ballen eintragen, zum Beispiel ${t.bought(buy)}${orApart}.`;
        },
        // Sums.
        priceOf: ({ what }, t) => `Preis für ${t.say(what)}`,
        priceOfFabric: ({ letter }) => `Stoff ${letter}`,
        priceOfPart: ({ title }, t) => t.say(title),
        aPrice: 'Preis',
        widthOfFabric: ({ letter }) => `Breite von Stoff ${letter}`,
        pricedInOther: ({ price, here }, t) => `„${t.money(price)}“ ist in ${price.currency?.toUpperCase() ?? ''}, gerechnet wird hier in ${here}. Bitte in ${here} schreiben, zum Beispiel ${so(PRICE, t)}.`,
        noLetter: 'Ein Stoff hat keinen Buchstaben. Bitte letter="A" schreiben.',
        sameLetter: ({ letter }) => `Zwei Stoffe haben den Buchstaben ${letter}; der erste gilt. Dem anderen einen eigenen Buchstaben geben.`,
        negativeCloth: 'Stoff kann nicht weniger als 0 sein. Zum Beispiel 22 1/2.',
        noPieces: 'Was aus Stoffstücken zugeschnitten wird, braucht seine Teile mit ihrer Anzahl, zum Beispiel 12.',
        itemOf: ({ item, letter }, t) => `${t.say(item)} aus Stoff ${letter}`,
        unusedFabric: ({ letter, isNamed }) => `Stoff ${letter} ist angelegt, aber kein Teil wird daraus zugeschnitten. ${isNamed ? 'Das Teil, das ihn nennt, braucht nichts davon' : 'Bitte ihn bei einem Teil angeben'}.`,
        leavesOut: ({ things }, t) => {
            const all = new Set(things.map((thing) => t.say(thing)));
            return `In der Summe fehlt, was keinen Preis hat: ${[...all].join(', ')}.`;
        },
        totalRow: ({ isKit, soFar }) => `${isKit ? 'Eine Materialpackung' : 'Summe'}${soFarOr(soFar)}`,
        sumOf: ({ costs }, t) => costs.map((cost) => t.money(cost)).join(' + '),
        kitsRow: ({ kits, soFar }) => `${kits > 1 ? `Alle ${kits} Materialpackungen` : 'In ganzen Ballen'}${soFarOr(soFar)}`,
        wholeBolts: ({ hasItems, each }, t) => `ganze Ballen${hasItems ? ' und die Posten jeder Packung' : ''}: ${t.money(each)} je Packung`,
        summary: ({ fabrics, byLength, inBolts, items, isUnfinished }, t) => {
            const sold = inBolts ? ' in ganzen Ballen' : byLength ? ' als Meterware' : '';
            const cloth = fabrics ? [t.many(fabrics, FABRICS) + sold] : [];
            const things = [...cloth, ...items.map((item) => t.say(item))].join(', ');
            const nothing = `Noch nichts auf der Liste${isUnfinished ? '' : ': Rechner in dieses Arbeitsblatt einfügen'}.`;
            const inAll = inBolts ? ' Ganze Ballen können mehr enthalten, als die Packungen brauchen.' : '';
            return things ? `${things}.${inAll}` : nothing;
        },
        // What is said of the parts and the fabrics.
        notYet: ({ title, isPlanning }, t) => `${t.say(title)}: noch nicht auf der Liste, ${isPlanning ? 'der Plan entsteht gerade' : 'dort ist etwas zu berichtigen'}.`,
        readAsSeveral: ({ title, written, letters }, t) => `${t.say(title)}: fabric="${written}" wird als ${letters.length} Stoffe gelesen, ${listed(letters)}. Soll ein Stoff so heißen, ihn anlegen: <quilt-fabric letter="${written}">.`,
        noSwatch: ({ letter, swatch }, t) => `Das Stoffmuster von Stoff ${letter}, ${t.quote(swatch)}, ist weder eine Farbe noch die Adresse eines Bildes. Zum Beispiel #d9c7a3 oder pictures/sand.png.`,
        moreOfBlock: ({ by, name, number }) => `${by > 0 ? `${by} mehr` : `${-by} weniger`} von ${name || `Block ${number}`}`,
        // The picture of the whole quilt.
        quiltPicture: ({ size, blocks, places, borders, isBound }, t) => {
            const named = blocks.map(({ name, count }) => (name ? `${count} ${name}` : t.many(count, BLOCKS)));
            const all = [
                ...(named[0] || !places ? named : [t.many(places, BLOCKS)]),
                ...(borders ? [t.many(borders, BORDERS)] : []),
                ...(isBound ? ['Einfassung'] : []),
            ];
            return `Der ganze Quilt, ${t.size(size)}${all[0] ? `: ${all.join(', ')}` : ''}.`;
        },
        wholeQuilt: 'Der ganze Quilt',
        showQuilt: 'Den ganzen Quilt zeigen',
        hideQuilt: 'Den ganzen Quilt ausblenden',
        saveSvg: 'Bild speichern (SVG)',
        savePng: 'Bild speichern (PNG)',
        cannotDraw: 'Der Teil, der den Quilt zeichnet, ließ sich nicht laden.',
        cannotSave: 'Dieser Browser erlaubt es hier nicht, das Bild zu speichern.',
        // The lists.
        shoppingList: 'Einkaufsliste',
        sheetsByWeek: ({ kind, hasWeeks }) => `${SHEETS[kind].other}, ${hasWeeks ? 'Woche für Woche' : 'Teil für Teil'}`,
        piecesHead: 'Teile',
        atHandHead: 'Vorhanden',
        atHandCell: ({ letter }) => `Vorhanden von Stoff ${letter}`,
        atHandOf: ({ letter }) => `Vorhanden von Stoff ${letter}`,
        notAtHand: ({ text }, t) => `${t.quote(text)} zählt nicht mit. Zum Beispiel 9 Fat Quarters, ${so('1,5 m', t)} 20 x 100 cm oder 2 Stücke zu 20 x 100 cm.`,
        leftRow: 'Noch zu kaufen',
        ownFirst: 'neu geplant, der vorhandene Stoff zuerst',
        stillMissing: ({ text }, t) => `noch ${t.say(text)}`,
        youHaveEnough: 'Genug vorhanden',
        ownPiece: (size, t) => `vorhandenes Stück, ${t.size(size)}`,
        fromLeftover: ({ letter, of, pieces }, t) => `aus dem Rest (${of ? t.say(of) : `Stoff ${letter}`}): ${listed(pieces.map((size) => t.size(size)))}`,
        leftoversList: 'Was übrig bleibt',
        leftoversFrom: ({ least }, t) => `Was übrig bleibt: die größten Stücke, mindestens ${t.l(least)} je Seite`,
        leftoversHead: 'Übrig',
        leaves: ({ pieces }, t) => pieces.map((one) => `${one.count > 1 ? `${one.count} Stücke zu ` : ''}${t.size(one)}`).join(', ') ||
            'nichts in dieser Größe',
        makesList: 'Das ergibt der vorhandene Stoff',
        blockHead: 'Block',
        blocksHead: 'Blöcke',
        runsOutHead: 'Reicht zuerst nicht',
        blocksOf: ({ blocks, of }) => `${blocks} von ${of}`,
        numbersHead: 'Aus Nummer',
        newHead: 'Neu',
        piecesOfPart: ({ pieces }, t) => pieces.map((cut) => `${cut.count} × ${t.say(cut.piece)}, ${t.size(cut)}`).join('; '),
        sheetNumbers: ({ numbers }) => ranges(numbers),
        shoppingListOfKit: 'Einkaufsliste für eine Materialpackung',
        cutList: 'Zuschneideliste',
        cutFrom: ({ fabric }) => `Zuschnitt aus ${fabric}`,
        fabricKey: 'Stoffübersicht',
        allAmounts: ({ amounts }, t) => listed(amounts.map((amount) => t.say(amount))),
        fabricHead: 'Stoff',
        nameHead: 'Name',
        forHead: 'Für',
        neededHead: 'Bedarf',
        unitHead: 'Einheit',
        priceHead: 'Preis',
        costHead: 'Kosten',
        boltsHead: 'Ballen',
        pieceHead: 'Teil',
        countHead: 'Anzahl',
        cutSizeHead: 'Zuschnitt',
        neededInHead: (_, t) => `Bedarf (${t.style.units})`,
        widthInHead: (_, t) => `Breite (${t.style.units})`,
        lengthInHead: (_, t) => `Länge (${t.style.units})`,
        forKitsHead: ({ kits }, t) => `Für ${t.many(kits, KITS)}`,
        uses: ({ titles }, t) => titles.map((title) => t.say(title)).join(', '),
        noPrice: 'kein Preis',
        totalLine: ({ soFar }) => `Summe${soFarOr(soFar)}`,
        bolts: ({ count }, t) => t.many(count, BOLTS),
        timesEach: ({ times, what }, t) => `${times} × ${t.say(what)}`,
        unitOf: ({ buy }, t) => t.unitOf(buy),
        cutSize: (size, t) => t.size(size),
        stripsTogether: 'Zusammen zugeschnitten: Streifen, von oben nach unten',
        leadForKits: ({ kits, soFar }, t) => `Für ${t.many(kits, KITS)}${soFar ? ', bisher' : ''}`,
        leadTotal: ({ isKit, soFar }) => (soFar ? 'Bisher' : isKit ? 'Eine Materialpackung' : 'Insgesamt'),
        leadBuy: ({ soFar }) => (soFar ? 'Kaufen, bisher' : 'Kaufen'),
        money: ({ money }, t) => t.money(money),
        things: ({ count }, t) => (count ? t.many(count, THINGS) : 'nichts'),
    },
};

export { worksheet };
