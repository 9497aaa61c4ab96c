import { Message } from '../measure/message.js';
import type { Money, Purchase } from './purchase.js';
import { Quantity, Stated } from './quantity.js';

/** What a row of the sheet holds. */
export type RowValue = Quantity | Purchase | Money | Message;

/** Collects the rows that a message comes from: those of every quantity in its values, at any depth. */
const rowsOf = (value: unknown, rows: Set<string>): void => {
  if (value instanceof Quantity) value.rowsInto(rows);
  else if (value instanceof Stated) rows.add(value.row);
  else if (value instanceof Message) for (const part of Object.values(value.values)) rowsOf(part, rows);
  else if (Array.isArray(value)) for (const part of value) rowsOf(part, rows);
};

/** A reckoned row: its value, how it was got, and where it came from. */
export class ReckonedRow {
  role: 'reckoned' | 'measurable' | 'measured' = 'reckoned';
  /** For a measured row: the value that was reckoned. */
  reckoned: Quantity | undefined;

  constructor(
    readonly id: string,
    public value: RowValue,
    /** A formula or a reason. */
    readonly how: Quantity | Message,
    /** Its name, if its id is not enough: `Border 2, sides`. */
    readonly label: Message | undefined,
    /** Rows that it comes from, besides those in its formula or its reason. */
    readonly also: readonly string[],
    /** A formula for a value that is not a quantity: the length of what is bought, the sum of money, the number in words. */
    readonly formula?: Quantity,
  ) {}

  /** The ids of the rows it was reckoned from. */
  get from(): string[] {
    const rows = new Set(this.also);
    rowsOf(this.how, rows);
    return [...rows];
  }
}

/** The row of an input, with the value that somebody gave or the initial one. */
export interface GivenRow {
  role: 'given';
  /** The input's key. */
  id: string;
  /** The value, or undefined if the text cannot be read. */
  value: unknown;
  /** What somebody wrote, or the initial value. */
  written: unknown;
}

export type Row = GivenRow | ReckonedRow;
