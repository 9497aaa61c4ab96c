import { html, nothing, type TemplateResult } from 'lit';

// A grid is a table of cells in one row of the page, like a small spreadsheet: the chart of a block, a cut list.

/** The row of a cell, and its place in that row. */
export type GridPlace = [row: number, at: number];

export type GridElement = HTMLInputElement | HTMLSelectElement;

/** What a cell of a grid is. */
export interface GridCellState {
  /** The id of the row of the page. */
  id: string;
  place: GridPlace;
  /** What it is called: nobody sees its row and its column by ear. */
  name: string;
  value: string;
  wrong: boolean;
  /** What can be chosen there, in words. Undefined if it is written. */
  choices?: Record<string, string> | undefined;
  /** How many signs it is wide, if that follows its text. */
  size?: number | undefined;
  placeholder?: string | undefined;
  /** The keyboard of a phone. */
  mode?: 'numeric' | undefined;
}

/** One cell. The first has the id of its row, and so its label. */
export const gridCell = ({ id, place, name, value, wrong, ...more }: GridCellState): TemplateResult => {
  const { choices, size, placeholder, mode } = more;
  const own = place.some(Boolean) ? `${id}-${place.join('-')}` : id;
  const invalid = wrong ? 'true' : nothing;
  // A screen reader says how a grid is filled in at its first cell, and at a wrong one; not at each.
  const how = own === id || wrong ? `how-${id}` : nothing;
  if (choices)
    return html`<select
      part="cell"
      id=${own}
      data-row=${id}
      data-at=${place.join(' ')}
      aria-label=${name}
      aria-describedby=${how}
      aria-invalid=${invalid}
    >
      ${Object.entries({ ...choices, [value]: choices[value] ?? value }).map(
        ([key, words]) =>
          html`<option value=${key} ?selected=${key === value} .selected=${key === value}>${words}</option>`,
      )}
    </select>`;
  return html`<input
    part="cell"
    id=${own}
    data-row=${id}
    data-at=${place.join(' ')}
    type="text"
    size=${size ?? nothing}
    inputmode=${mode ?? nothing}
    placeholder=${placeholder || nothing}
    autocomplete="off"
    autocapitalize="off"
    spellcheck="false"
    enterkeyhint="next"
    aria-label=${name}
    aria-describedby=${how}
    aria-invalid=${invalid}
    .defaultValue=${value}
    .value=${value}
  />`;
};

/** Whether this is a cell of a grid. */
export const isOfGrid = (target: unknown): target is GridElement =>
  !!(target as HTMLElement | null)?.dataset?.['at'];

/** The cells of the grid around this one. */
export const cellsAround = (one: Element): GridElement[] => [
  ...(one.closest('.cells')?.querySelectorAll<GridElement>('[data-at]') ?? []),
];

export const placeOf = ({ dataset }: GridElement): GridPlace => {
  const [row = 0, at = 0] = (dataset['at'] ?? '').split(' ').map(Number);
  return [row, at];
};

/** The texts in the cells around this one, row by row. */
export const textsAround = (one: Element): string[][] => {
  const rows: string[][] = [];
  for (const cell of cellsAround(one)) (rows[placeOf(cell)[0]] ??= []).push(cell.value);
  return rows;
};

/** The cells of a spreadsheet or a text, as they are copied. */
export const blockOf = (pasted: string): string[][] =>
  pasted
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((line) => line.split('\t'));

/** Rows of texts with a block of them put in from a place on. */
export const withBlock = (rows: string[][], [from, start]: GridPlace, block: string[][]): string[][] => {
  const all = rows.map((cells) => [...cells]);
  for (const [row, line] of block.entries()) {
    const cells = (all[from + row] ??= []);
    for (const [at, text] of line.entries()) cells[start + at] = text;
    for (let at = 0; at < cells.length; at += 1) cells[at] ??= '';
  }
  return all;
};

/** The cell some rows below or above this one, if there is one. */
export const beyond = (one: GridElement, step: number): GridElement | undefined => {
  const [row, at] = placeOf(one);
  const others = cellsAround(one).filter((other) => placeOf(other)[0] === row + step);
  return others[Math.min(at, others.length - 1)];
};
