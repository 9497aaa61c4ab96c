import { css, html, nothing, type TemplateResult } from 'lit';
import { gridCells, writeCells, type GridCell } from '../../calculators/block/chart.js';
import { say } from '../../calculators/block/shape.js';
import type { CellState } from '../../face/cell.js';

/** The most cells each way that a page shows. A chart that is larger is wrong, and stays a text. */
const MOST_SHOWN = 24;

/** The chart as a table of cells, as its author would write it, with an empty cell after each row and a row after the last. */
export const grid = (
  { id, text, label, t }: CellState,
  isWrong: (row: number, cell: number) => boolean,
): TemplateResult | undefined => {
  const rows = gridCells(text);
  if (rows.length > MOST_SHOWN || rows.some((cells) => cells.length > MOST_SHOWN)) return undefined;
  const input = (value: string, row: number, at: number): TemplateResult =>
    html`<input
      part="cell"
      id=${row || at ? nothing : id}
      data-row=${id}
      data-at="${row} ${at}"
      type="text"
      size=${Math.max(1, value.length - 1)}
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      enterkeyhint="next"
      aria-label=${t.say(say('cellName', { row: row + 1, cell: at + 1 }))}
      aria-describedby="how-${id}"
      aria-invalid=${isWrong(row, at) ? 'true' : nothing}
      .defaultValue=${value}
      .value=${value}
    />`;
  // The empty cell is one of them, so that it stays the same input while somebody types in it.
  const cells = (all: GridCell[], row: number): TemplateResult[] =>
    [...all, NEXT].map(
      (cell, at) =>
        html`<td class=${cell === NEXT ? 'next' : nothing} colspan=${cell.across} rowspan=${cell.down}>
          ${input(cell.text, row, at)}
        </td>`,
    );
  return html`<div class="chart" role="group" aria-label=${label}>
    <table role="presentation">
      ${[...rows, []].map((all, row) => html`<tr>${cells(all, row)}</tr>`)}
    </table>
  </div>`;
};

/** The empty cell after a row. */
const NEXT: GridCell = { text: '', across: '1', down: '1' };

/** Whether this is a cell of a chart. */
export const isOfGrid = (target: unknown): target is HTMLInputElement =>
  !!(target as HTMLElement | null)?.dataset?.['at'];

const inputsOf = (inside: Element): HTMLInputElement[] => [
  ...(inside.closest('.chart')?.querySelectorAll('input') ?? []),
];

/** The row and the place in it of a cell. */
const placeOf = ({ dataset }: HTMLInputElement): [row: number, at: number] => {
  const [row = 0, at = 0] = (dataset['at'] ?? '').split(' ').map(Number);
  return [row, at];
};

/** The texts in the cells around this one, row by row, without the empty ones at the ends. */
const textsAround = (one: HTMLInputElement): string[][] => {
  const rows: string[][] = [];
  for (const input of inputsOf(one)) (rows[placeOf(input)[0]] ??= []).push(input.value);
  return rows;
};

const trimmed = <T>(all: T[], isEmpty: (one: T) => boolean): T[] => {
  const kept = [...all];
  while (kept.length && isEmpty(kept.at(-1) as T)) kept.pop();
  return kept;
};

const written = (rows: string[][]): string =>
  writeCells(
    trimmed(
      rows.map((cells) => trimmed(cells, (text) => !text.trim())),
      (cells) => !cells.length,
    ),
  );

/** The chart in the cells around this one, as text. */
export const chartAround = (one: HTMLInputElement): string => written(textsAround(one));

/** The same with a block of cells from a spreadsheet or a text, put in from this cell on. */
export const chartWith = (one: HTMLInputElement, pasted: string): string => {
  const rows = textsAround(one);
  const [from, start] = placeOf(one);
  pasted
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .forEach((line, row) => {
      const cells = (rows[from + row] ??= []);
      line.split('\t').forEach((text, at) => (cells[start + at] = text));
      for (let at = 0; at < cells.length; at += 1) cells[at] ??= '';
    });
  return written(rows);
};

/** The cell above or below this one, if there is one. */
export const beyond = (one: HTMLInputElement, step: number): HTMLInputElement | undefined => {
  const [row, at] = placeOf(one);
  const others = inputsOf(one).filter((other) => placeOf(other)[0] === row + step);
  return others[Math.min(at, others.length - 1)];
};

export const gridStyles = css`
  .chart { overflow-x: auto; }
  .chart table { inline-size: auto; border: 0; }
  .chart.chart tr { display: table-row; border: 0; }
  .chart.chart td { display: table-cell; padding: 1px; border: 1px solid var(--_soft); inline-size: auto; }
  .chart.chart td.next { border: 0; }
  .chart input { margin: 0; inline-size: auto; min-inline-size: 100%; padding-inline: 2px; text-align: center; background: none; border-block-end-color: transparent; }
  /* Below 16px a phone zooms in on the cell. */
  @media not (any-pointer: coarse) {
    .chart input { font-size: 0.85em; min-block-size: max(1.7em, 24px); }
  }
  .chart [aria-invalid] { border-block-end-color: var(--_accent); }
  .chart .next input { min-inline-size: 0; background: color-mix(in srgb, currentColor 6%, transparent); }
`;
