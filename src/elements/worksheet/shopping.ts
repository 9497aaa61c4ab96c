import { lengthOf } from '../../drawing/picture.js';
import { plural } from '../../reckon/shared.js';
import { exact, upTo } from '../../measure/exact.js';
import { decimal, type Style } from '../../measure/format.js';
import { toUnit } from '../../measure/units.js';
import type { Cut } from '../../reckon/answer.js';
import type { Money, WorksheetResult } from '../../reckon/worksheet.js';
import type { Listing } from '../../face/calculator.js';
import type { Cells } from '../../face/export.js';

/** One line of the shopping list: cloth by length, or something bought by the piece. */
interface Line {
  letter: string;
  name: string;
  uses: string;
  /** Exact inches; empty for what is bought by the piece. */
  need: string;
  amount: string;
  unit: string;
  text: string;
  price?: Money | undefined;
  cost?: Money | undefined;
  bolts?: number | undefined;
  width?: string | undefined;
}

/** The list's lines in the order of their letters; what has no letter comes last. */
export const linesOf = ({ fabrics, items }: WorksheetResult): Line[] =>
  [
    ...fabrics.map(({ parts, buy, ...line }) => ({
      ...buy,
      ...line,
      uses: parts.map(({ title }) => title.toLowerCase()).join(', '),
    })),
    ...items.map(({ fabric, title, text, ...item }) => {
      const [, amount = text, unit = ''] = /^([\d /.]+) (\D.*)/.exec(text) ?? [];
      return { ...item, letter: fabric, uses: title.toLowerCase(), need: '', amount, unit, text };
    }),
  ].sort((a, b) => (a.letter || '\uffff').localeCompare(b.letter || '\uffff'));

export const nameOf = ({ letter, name }: { letter: string; name: string }): string =>
  [letter, name].filter(Boolean).join(' · ') || '–';

/** What is bought by the piece. */
const THING = /(.*(package|quarter|eighth|strip|square|sheet))s?(?=,|$)/;

/** What all the kits take: whole bolts, or so many times what one kit takes. */
const forKits = ({ bolts, amount, unit, text }: Line, kits: number): string => {
  const all = kits * Number(amount);
  return bolts
    ? plural(bolts, 'bolt')
    : THING.test(unit)
      ? `${all} ${all > 1 ? unit.replace(THING, '$1s') : unit}`
      : `${kits} × ${text}`;
};

const totalOf = ({ soFar }: WorksheetResult): string => (soFar ? 'Total so far' : 'Total');

/** The shopping list as it is shown. */
export const shopping = (result: WorksheetResult, style: Style): Listing => {
  const { total, kits } = result;
  return {
    caption: kits ? 'Shopping list for one kit' : 'Shopping list',
    head: [
      'Fabric',
      'For',
      'Needed',
      'Buy',
      ...(total ? ['Price', 'Cost'] : []),
      ...(kits ? [`For ${plural(kits.count, 'kit')}`] : []),
    ],
    rows: [
      ...linesOf(result).map((line) => [
        nameOf(line),
        line.uses,
        line.need && lengthOf(line.need, style),
        line.text,
        ...(total ? [line.price?.text ?? '', line.cost?.text ?? 'no price'] : []),
        ...(kits ? [forKits(line, kits.count)] : []),
      ]),
      ...(total ? [[totalOf(result), '', '', '', '', total.text, ...(kits ? [''] : [])]] : []),
    ],
  };
};

/** One line of the cut list of all parts. */
export interface Piece {
  letter: string;
  name: string;
  title: string;
  cut: Cut;
}

/** The shopping list and the cut list as cells, numbers as numbers. */
export const worksheetCells = (result: WorksheetResult, pieces: Piece[], { units }: Style): Cells => {
  const number = (written: string | undefined): number | string =>
    written ? +decimal(exact(written), 4) : '';
  const long = (inches: string): number | string => inches && +decimal(toUnit(exact(inches), units), 4);
  // Of what is bought a third is not 0.3333: that much would be short.
  const numeric = (amount: string): number | string =>
    /^[\d /.]+$/.test(amount) ? +decimal(upTo(exact(amount), exact(1, 10_000)), 4) : amount;
  return [
    ['Shopping list'],
    [
      'Fabric',
      'Name',
      'For',
      `Needed (${units})`,
      'Buy',
      'Unit',
      'Price',
      'Cost',
      'Bolts',
      `Width (${units})`,
    ],
    ...linesOf(result).map(
      ({ letter, name, uses, need, amount, unit, price, cost, bolts = '', width = '' }) => [
        letter,
        name,
        uses,
        long(need),
        numeric(amount),
        unit,
        number(price?.amount),
        number(cost?.amount),
        bolts,
        long(width),
      ],
    ),
    ...(result.total ? [[totalOf(result), '', '', '', '', '', '', number(result.total.amount)]] : []),
    ...result.notes.map((note) => [note]),
    [],
    ['Cut list'],
    ['Fabric', 'Name', 'For', 'Piece', 'How many', `Width (${units})`, `Length (${units})`, 'Cut size'],
    ...pieces.map(({ letter, name, title, cut }) => [
      letter,
      name,
      title,
      cut.piece,
      cut.count,
      long(cut.width),
      long(cut.length),
      cut.text,
    ]),
    [],
  ];
};
