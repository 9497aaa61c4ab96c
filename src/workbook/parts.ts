import { readSheet } from '../calculators/cutting/sheets.js';
import { textOf } from '../ledger/field.js';
import { usualLength } from '../ledger/lengths.js';
import { sayOfShop } from '../ledger/shop.js';
import { ONE, type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { readAtHand, type AtHand } from './at-hand.js';
import type { WorkbookFabric, WorkbookPart } from './input.js';
import { Stock } from './own-cloth.js';
import { readWritten, tried } from './prices.js';
import { say } from './sayings.js';
import { worksheetFields, type WorksheetLedger } from './shape.js';

/** The letter of a fabric, with single spaces in it. */
export const letterOf = (written: unknown): string =>
  textOf(written).normalize('NFC').replace(/\s+/g, ' ').trim();

/** A fabric that parts may name. */
export interface Declared {
  letter: string;
  name: string;
  /** As it was written: of a yard or a metre, or of one of its sheets. */
  price: unknown;
  /** What it is bought in, if that is not cloth by length. */
  sheet: string;
  /** What the reader has of it, and the rest of that while the lines of the list are made. Undefined if nobody asks. */
  atHand: AtHand[] | undefined;
  stock: Stock | undefined;
}

/** The fabrics that the page declares. If two have the same letter, the first one counts. */
export const readFabrics = (ledger: WorksheetLedger, fabrics: WorkbookFabric[]): Declared[] => {
  const declared: Declared[] = [];
  for (const { name, price, fabricWidth, sheet, atHand, ...fabric } of fabrics) {
    const letter = letterOf(fabric.letter);
    if (!letter) ledger.note(say('noLetter'));
    else if (declared.some((one) => one.letter === letter)) ledger.note(say('sameLetter', { letter }));
    else {
      const width = tried(ledger, say('widthOfFabric', { letter }), () =>
        readWritten(ledger, worksheetFields.fabricWidth, fabricWidth, 'fabricWidth'),
      );
      const written = textOf(sheet).trim();
      if (written)
        tried(ledger, say('fabricOf', { letter }), () =>
          readSheet(written, ledger.style, { oneWay: false, kept: ONE }),
        );
      declared.push({
        letter,
        name: textOf(name),
        price,
        sheet: written,
        ...ownOf(ledger, letter, atHand, width),
      });
    }
  }
  return declared;
};

/** What the reader has of a fabric. Kits are for others, so her own cloth does not count there. */
const ownOf = (
  ledger: WorksheetLedger,
  letter: string,
  atHand: unknown,
  width: Exact | undefined,
): Pick<Declared, 'atHand' | 'stock'> => {
  const { values, style } = ledger;
  if (atHand === undefined || atHand === null || values.kits) return { atHand: undefined, stock: undefined };
  const written = textOf(atHand).trim();
  const usual = width ?? values.fabricWidth ?? usualLength(COTTON_WIDTH, style);
  const { pieces, problems } = readAtHand(written, usual, style);
  for (const says of problems) ledger.note(sayOfShop('about', { what: say('atHandOf', { letter }), says }));
  return { atHand: pieces, stock: new Stock(written, pieces, !!width) };
};

/** All that is cut from one fabric. */
export interface Group {
  /** Part of its row ids, so that they differ from those of other fabrics. */
  key: string;
  letter: string;
  parts: WorkbookPart[];
}

/** The parts of each fabric. A part that names no fabric is its own group, since its cloth may be any. */
export const groupsOf = (declared: Declared[], parts: WorkbookPart[]): Group[] => {
  const groups = new Map<string, Group>(
    declared.map(({ letter }) => [letter, { key: letter, letter, parts: [] }]),
  );
  for (const [at, part] of parts.entries()) {
    const letter = part.fabric;
    const key = letter || `part ${at}`;
    const group = groups.get(key) ?? { key, letter, parts: [] };
    group.parts.push(part);
    groups.set(key, group);
  }
  return [...groups.values()];
};

/** The widths of these parts, as sold, each once. 0 means that the width is not known. */
const widthsOf = (parts: WorkbookPart[]): Exact[] => {
  const widths: Exact[] = [];
  for (const { sold } of parts)
    if (!sold.equals(0) && !widths.some((width) => width.equals(sold))) widths.push(sold);
  return widths;
};

/** The parts that are cut from cloth of one width. Parts without a width go with the first width. */
export const byWidth = (parts: WorkbookPart[]): WorkbookPart[][] => {
  const widths = widthsOf(parts);
  return widths.length < 2
    ? [parts]
    : widths.map((width, at) => parts.filter(({ sold }) => sold.equals(width) || (!at && sold.equals(0))));
};

export const titlesOf = (parts: Pick<WorkbookPart, 'title'>[]): Message[] => parts.map(({ title }) => title);
