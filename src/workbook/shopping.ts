import type { ListCell, Listing } from '../ledger/listing.js';
import { Entry, sayInList } from '../ledger/listing.js';
import { manyOf, Purchase, type Money } from '../ledger/purchase.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { titlesOf } from './parts.js';
import { say } from './sayings.js';
import type { OwnCloth, WorksheetAnswer } from './shape.js';

/** One line of the shopping list: cloth by length, or something bought by the piece. */
export interface ListLine {
  letter: string;
  name: string;
  /** What it is for. */
  uses: Message;
  /** Undefined for what is bought by the piece. */
  need?: Exact;
  /** Undefined where only its words are known. */
  buy: Purchase | undefined;
  text: Message;
  price?: Money | undefined;
  cost?: Money | undefined;
  bolts?: number | undefined;
  width?: Exact | undefined;
  /** What the reader has of it, if she is asked. */
  own?: OwnCloth | undefined;
  /** Nothing is bought for it: it is cut from what others leave. */
  isFree?: true;
}

/** Letters that every language sorts in the same way. A browser takes long over its first question about a language. */
const PLAIN = /^[A-Z\d ]+$/;

/** By letter. What has none comes last. */
export const byLetter = ({ letter: a }: { letter: string }, { letter: b }: { letter: string }): number => {
  if (!a || !b) return Number(!a) - Number(!b);
  if (!PLAIN.test(a) || !PLAIN.test(b)) return a.localeCompare(b);
  return a < b ? -1 : Number(a > b);
};

/** The lines of the list, sorted by letter. Those without a letter come last. */
export const listLines = ({
  fabrics,
  items,
  fromLeftovers = [],
}: Pick<WorksheetAnswer, 'fabrics' | 'items' | 'fromLeftovers'>): ListLine[] =>
  [
    ...fabrics.map(({ parts, letter, name, need, buy, text, price, cost, bolts, width, own }): ListLine => {
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
    ...items.map(({ title, parts, fabric, name, text, price, cost, own, used: { buy } }): ListLine => {
      const titles = parts ? titlesOf(parts) : [title];
      return { letter: fabric, name, uses: say('uses', { titles }), buy, text, price, cost, own };
    }),
    ...fromLeftovers.map(({ title, fabric: letter, name, text }): ListLine => ({
      letter,
      name,
      uses: say('uses', { titles: [title] }),
      buy: undefined,
      text,
      isFree: true,
    })),
  ].sort(byLetter);

/** What all the kits take: whole bolts, or a multiple of one kit. */
const forKits = ({ bolts, buy, text }: ListLine, kits: number): Message | Purchase =>
  bolts
    ? say('bolts', { count: bolts })
    : ((buy && manyOf(buy, kits)) ?? say('timesEach', { times: kits, what: text }));

/** The cell for what the reader has of a fabric: in its first line. */
const entryOf = (line: ListLine, lines: ListLine[]): Entry | undefined =>
  line.own && lines.find(({ letter }) => letter === line.letter) === line
    ? new Entry(line.letter, line.own.written, say('atHandCell', { letter: line.letter }))
    : undefined;

const totalLine = ({ soFar }: WorksheetAnswer): Message => say('totalLine', { soFar: !!soFar });

/** The name of a fabric in the list: `A · Sand`. */
export const namedOf = ({ letter, name }: { letter: string; name: string }): string =>
  [letter, name].filter(Boolean).join(' · ') || '–';

/** The shopping list as it is shown. */
export const shopping = (answer: WorksheetAnswer): Listing => {
  const { total, kits } = answer;
  const count = kits?.count;
  const lines = listLines(answer);
  const asks = lines.some(({ own }) => own);
  const row = (line: ListLine): ListCell[] => [
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
              ...Array<undefined>(4),
              total,
              ...Array<undefined>(Number(!!count) + Number(asks)),
            ],
          ]
        : []),
    ],
  };
};

/** How many blocks the reader's own cloth makes. */
export const makesList = ({ makes }: Pick<WorksheetAnswer, 'makes'>): Listing[] =>
  makes
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
export const fabricKey = ({
  fabrics,
  items,
}: Pick<WorksheetAnswer, 'fabrics' | 'items'>): { letter: string; name: string; amounts: Message[] }[] => {
  const key = new Map<string, { letter: string; name: string; amounts: Message[] }>();
  for (const { letter, name, text } of listLines({ fabrics, items })) {
    if (!letter) continue;
    const entry = key.get(letter) ?? { letter, name, amounts: [] };
    entry.amounts.push(text);
    key.set(letter, entry);
  }
  return [...key.values()];
};

/** What to show in large type: the total, or the number of things to buy. */
export const headline = ({
  total,
  soFar = false,
  fabrics,
  items,
  kits,
}: WorksheetAnswer): { lead: Message; large: Message } => {
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
