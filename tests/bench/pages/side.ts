/** One of those that are compared, in a frame of its own. */
export interface Side {
  /** How many rows of a table it shows. */
  rows: number;
  /** Its cells that may be typed in. */
  cells: string[];
  /** Goes into a cell. */
  enter?: (cell: string) => Promise<void>;
  /** Types another value than before in that cell; ends when all that changes at once is drawn and laid out. */
  stroke: (cell: string, at: number) => Promise<void>;
  /** Ends when what is made in the background is drawn too; whether that value was any good. */
  finish?: () => Promise<boolean>;
  /** Puts the first value back. */
  leave?: (cell: string) => Promise<void>;
}

declare global {
  interface Window {
    side: Side;
  }
}
