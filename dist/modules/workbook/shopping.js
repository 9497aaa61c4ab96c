import { sayInList, Entry } from '../ledger/listing.js';
import { Purchase, manyOf } from '../ledger/purchase.js';
import { titlesOf } from './parts.js';
import { say } from './sayings.js';

/** Letters that every language sorts in the same way. A browser takes long over its first question about a language. */
const PLAIN = /^[A-Z\d ]+$/;
/** By letter. What has none comes last. */
const byLetter = ({ letter: a }, { letter: b }) => {
    if (!a || !b)
        return Number(!a) - Number(!b);
    if (!PLAIN.test(a) || !PLAIN.test(b))
        return a.localeCompare(b);
    return a < b ? -1 : Number(a > b);
};
/** The lines of the list, sorted by letter. Those without a letter come last. */
const listLines = ({ fabrics, items, fromLeftovers = [], }) => [
    ...fabrics.map(({ parts, letter, name, need, buy, text, price, cost, bolts, width, own }) => {
        const uses = say('uses', { titles: titlesOf(parts) });
        // The amount alone: `text` says which lengths it is bought in.
        const { inches, amount, unit } = buy;
        return {
            letter,
            name,
            uses,
            need,
            buy: new Purchase(inches, amount, unit),
            text,
            price,
            cost,
            bolts,
            width,
            own,
        };
    }),
    ...items.map(({ title, parts, fabric, name, text, price, cost, own, used: { buy } }) => {
        const titles = parts ? titlesOf(parts) : [title];
        return { letter: fabric, name, uses: say('uses', { titles }), buy, text, price, cost, own };
    }),
    ...fromLeftovers.map(({ title, fabric: letter, name, text }) => ({
        letter,
        name,
        uses: say('uses', { titles: [title] }),
        buy: undefined,
        text,
        isFree: true,
    })),
].sort(byLetter);
/** What all the kits take: whole bolts, or a multiple of one kit. */
const forKits = ({ bolts, buy, text }, kits) => bolts
    ? say('bolts', { count: bolts })
    : ((buy && manyOf(buy, kits)) ?? say('timesEach', { times: kits, what: text }));
/** The cell for what the reader has of a fabric: in its first line. */
const entryOf = (line, lines) => line.own && lines.find(({ letter }) => letter === line.letter) === line
    ? new Entry(line.letter, line.own.written, say('atHandCell', { letter: line.letter }))
    : undefined;
const totalLine = ({ soFar }) => say('totalLine', { soFar: !!soFar });
/** The name of a fabric in the list: `A · Sand`. */
const namedOf = ({ letter, name }) => [letter, name].filter(Boolean).join(' · ') || '–';
/** The shopping list as it is shown. */
const shopping = (answer) => {
    const { total, kits } = answer;
    const count = kits?.count;
    const lines = listLines(answer);
    const asks = lines.some(({ own }) => own);
    const row = (line) => [
        namedOf(line),
        line.uses,
        line.need,
        line.text,
        ...(total ? [line.price, line.cost ?? (line.isFree ? undefined : say('noPrice'))] : []),
        ...(count ? [line.isFree ? undefined : forKits(line, count)] : []),
        ...(asks ? [entryOf(line, lines)] : []),
    ];
    return {
        caption: count ? say('shoppingListOfKit') : say('shoppingList'),
        head: [
            say('fabricHead'),
            say('forHead'),
            say('neededHead'),
            sayInList('buyHead'),
            ...(total ? [say('priceHead'), say('costHead')] : []),
            ...(count ? [say('forKitsHead', { kits: count })] : []),
            ...(asks ? [say('atHandHead')] : []),
        ],
        rows: [
            ...lines.map(row),
            ...(total
                ? [
                    [
                        totalLine(answer),
                        ...Array(4),
                        total,
                        ...Array(Number(!!count) + Number(asks)),
                    ],
                ]
                : []),
        ],
    };
};
/** How many blocks the reader's own cloth makes. */
const makesList = ({ makes }) => makes
    ? [
        {
            caption: say('makesList'),
            head: [say('blockHead'), say('blocksHead'), say('runsOutHead')],
            rows: makes.map(({ title, blocks, of, runsOut }) => [
                title,
                say('blocksOf', { blocks, of }),
                runsOut,
            ]),
        },
    ]
    : [];
/** The fabric key: every fabric with a letter, and everything that is bought of it. */
const fabricKey = ({ fabrics, items, }) => {
    const key = new Map();
    for (const { letter, name, text } of listLines({ fabrics, items })) {
        if (!letter)
            continue;
        const entry = key.get(letter) ?? { letter, name, amounts: [] };
        entry.amounts.push(text);
        key.set(letter, entry);
    }
    return [...key.values()];
};
/** What to show in large type: the total, or the number of things to buy. */
const headline = ({ total, soFar = false, fabrics, items, kits, }) => {
    if (kits?.cost)
        return {
            lead: say('leadForKits', { kits: kits.count, soFar }),
            large: say('money', { money: kits.cost }),
        };
    if (total)
        return { lead: say('leadTotal', { isKit: !!kits, soFar }), large: say('money', { money: total }) };
    // A line of which the reader has enough is on the list, but nothing to buy.
    const count = [...fabrics, ...items].filter(({ own }) => !own?.isEnough).length;
    return { lead: say('leadBuy', { soFar }), large: say('things', { count }) };
};

export { byLetter, fabricKey, headline, listLines, makesList, namedOf, shopping };
