import type { CutPiece } from '../planner/plan.js';
import { least, most, ZERO, type Exact } from '../measure/exact.js';
import { mixed, type Style } from '../measure/format.js';
import { INCHES } from '../measure/units.js';
import { readLength, moneyField, readField, refuse, textOf, unlessRefused, type Field } from './fields.js';
import type { FabricInput, ItemInput, PartInput, WorksheetBook, WorksheetInput } from './worksheet.js';

/** The entries of a list, as far as a page wrote one. */
const entries = <T>(list: T[] | undefined): T[] =>
  Array.isArray(list) ? list.filter((one) => one && typeof one === 'object') : [];
export const sentences = (list: unknown): string[] =>
  Array.isArray(list) ? list.map(textOf).filter(Boolean) : [];

/** What was written; what cannot be read is named in a note, as of this, and left out. */
const tried = <T>(book: WorksheetBook, field: Field<T>, written: unknown, of: string): T | undefined =>
  unlessRefused(
    () => {
      if (field.kind === 'money') book.sameCurrency(written);
      return readField(field, written, book.style);
    },
    ({ message }) => {
      book.notes.push(`${of}: ${message}`);
      return undefined;
    },
  );

const money = moneyField('A price');

/** The price of this, where one was given that can be read. */
export const priceOf = (book: WorksheetBook, written: unknown, what: string): Exact | undefined =>
  tried(book, money, written, `The price of ${what}`);

/** Lets a currency that any price names hold for all, where none is given. */
export const adoptCurrency = (book: WorksheetBook, { fabrics, parts, items }: WorksheetInput): void =>
  book.adopt(
    ...[...entries(fabrics), ...entries(parts)].map(({ price }) => price),
    ...entries(items).map(({ cost }) => cost),
  );

/** A fabric's letter, with one space wherever there are several. */
export const letterOf = (written: unknown): string => textOf(written).replace(/\s+/g, ' ').trim();

/** A fabric that parts may name. */
export interface Declared {
  letter: string;
  name: string;
  price: unknown;
}

/** The fabrics that the page declares; of two with one letter the first. */
export const readFabrics = (book: WorksheetBook, fabrics: FabricInput[] | undefined): Declared[] => {
  const declared: Declared[] = [];
  for (const { name, price, fabricWidth, ...fabric } of entries(fabrics)) {
    const letter = letterOf(fabric.letter);
    if (!letter) book.notes.push('A fabric has no letter. Write letter="A".');
    else if (declared.some((one) => one.letter === letter))
      book.notes.push(
        `Two fabrics have the letter ${letter}; the first is used. Give the other a letter of its own.`,
      );
    else {
      tried(book, book.fields.fabricWidth, fabricWidth, `The width of fabric ${letter}`);
      declared.push({ letter, name: textOf(name), price });
    }
  }
  return declared;
};

/** Something bought by the piece. */
export interface Item {
  title: string;
  /** The letter and the name of the fabric it is of; empty where it is no cloth. */
  fabric: string;
  name: string;
  text: string;
  price: unknown;
}

export const readItems = (items: ItemInput[] | undefined, declared: Declared[]): Item[] =>
  entries(items).map(({ title, fabric, text, cost }) => ({
    title: textOf(title),
    fabric: textOf(fabric),
    name: declared.find(({ letter }) => letter === fabric)?.name ?? '',
    text: textOf(text) || textOf(title) || 'something',
    price: cost,
  }));

/** What one part takes from its fabric. */
export interface Part {
  title: string;
  need: Exact;
  width: Exact;
  sold: Exact;
  washed: Exact;
  price: unknown;
  /** The cloth that its price is of; undefined where that is the worksheet's own unit. */
  per: Exact | undefined;
  /** Their names in `names`. */
  pieces: CutPiece[];
  names: string[];
}

const inInches: Style = { units: 'in' };

const readPart = (name: string, part: PartInput): Part => {
  const { need, width = '0', sold = width, washed = '1', pieces, price, per } = part;
  const amount = (written: unknown): Exact => {
    const value = readLength(written, inInches);
    return value.lt(ZERO) ? refuse('cloth cannot be less than 0. Write it like 22 1/2.') : value;
  };
  const cut = entries(pieces);
  return {
    title: name,
    price,
    per: per === 'yd' || per === 'm' ? INCHES[per] : undefined,
    need: amount(need),
    width: amount(width),
    sold: amount(sold),
    washed: amount(washed),
    pieces: cut.map(({ width, length, count, turn }) => {
      const sides = [amount(width), amount(length)] as const;
      // Long side across, as a top plans its own: the same search comes to the same, or to less.
      const [across, along] = turn ? [most(...sides), least(...sides)] : sides;
      return { width: across, height: along, count, turn: !!turn };
    }),
    names: cut.map(({ piece }) => textOf(piece) || name),
  };
};

/** All that is cut from one fabric. */
export interface Group {
  /** Tells its rows from those of others. */
  key: string;
  letter: string;
  parts: Part[];
}

/** The parts of each fabric; one that names none is a group of its own, since its cloth may be any. */
export const groupsOf = (
  book: WorksheetBook,
  declared: Declared[],
  parts: PartInput[] | undefined,
): Group[] => {
  const groups = new Map<string, Group>(
    declared.map(({ letter }) => [letter, { key: letter, letter, parts: [] }]),
  );
  for (const [at, part] of entries(parts).entries()) {
    const name = textOf(part.title) || 'Part';
    const letter = letterOf(part.fabric);
    const key = letter || `part ${at}`;
    const group = groups.get(key) ?? { key, letter, parts: [] };
    group.parts.push(book.blame('parts', () => readPart(name, part), `${name}: `));
    groups.set(key, group);
  }
  return [...groups.values()];
};

/** Parts that are cut from cloth of one width; one that does not say its width goes with the first. */
export const byWidth = (parts: Part[]): Part[][] => {
  const widths = [...new Set(parts.map(({ sold }) => mixed(sold)))].filter((width) => width !== '0');
  return widths.length < 2
    ? [parts]
    : widths.map((width, at) =>
        parts.filter(({ sold }) => mixed(sold) === width || (!at && sold.equals(ZERO))),
      );
};
