import { css, html, nothing, type TemplateResult } from 'lit';
import { gridCells, writeCells, type GridCell } from '../../calculators/block/chart.js';
import { say } from '../../calculators/block/shape.js';
import type { CellState } from '../../face/cell.js';
import { gridCell } from '../../face/grid.js';

/** The most cells each way that a page shows. A chart that is larger is wrong, and stays a text. */
export const MOST_SHOWN = 24;

/** The chart as a table of cells, as its author would write it, with an empty cell after each row and a row after the last. */
export const grid = (
  { id, text, label, t }: CellState,
  isWrong: (row: number, cell: number) => boolean,
): TemplateResult | undefined => {
  const rows = gridCells(text);
  if (rows.length > MOST_SHOWN || rows.some((cells) => cells.length > MOST_SHOWN)) return undefined;
  const input = (value: string, row: number, at: number): TemplateResult =>
    gridCell({
      id,
      place: [row, at],
      name: t.say(say('cellName', { row: row + 1, cell: at + 1 })),
      value,
      wrong: isWrong(row, at),
      size: Math.max(1, value.length - 1),
    });
  // The empty cell is one of them, so that it stays the same input while somebody types in it.
  const cells = (all: GridCell[], row: number): TemplateResult[] =>
    [...all, NEXT].map(
      (cell, at) =>
        html`<td class=${cell === NEXT ? 'next' : nothing} colspan=${cell.across} rowspan=${cell.down}>
          ${input(cell.text, row, at)}
        </td>`,
    );
  return html`<div class="cells chart" role="group" aria-label=${label}>
    <table role="presentation">
      ${[...rows, []].map((all, row) => html`<tr>${cells(all, row)}</tr>`)}
    </table>
  </div>`;
};

/** The empty cell after a row. */
const NEXT: GridCell = { text: '', across: '1', down: '1' };

const trimmed = <T>(all: T[], isEmpty: (one: T) => boolean): T[] => {
  const kept = [...all];
  while (kept.length && isEmpty(kept.at(-1) as T)) kept.pop();
  return kept;
};

/** The chart in these cells, as text, without the empty ones at the ends. */
export const chartIn = (rows: string[][]): string =>
  writeCells(
    trimmed(
      rows.map((cells) => trimmed(cells, (text) => !text.trim())),
      (cells) => !cells.length,
    ),
  );

export const gridStyles = css`
  .chart { overflow-x: auto; animation: more linear; animation-timeline: scroll(self inline); }
  .chart:dir(rtl) { animation-direction: reverse; }
  /* A shade lies at the edge that has more. A chart that does not scroll has none. */
  @keyframes more {
    from { box-shadow: inset -0.7em 0 0.5em -0.5em var(--_accent); }
    to { box-shadow: inset 0.7em 0 0.5em -0.5em var(--_accent); }
  }
  /* Where there is room a chart lies under its name, as wide as the rows: the names take 33 of 100, so it begins 33/67 of its cell before that. */
  @media screen {
    @container (min-width: 34.01em) {
      .amount:has(.chart:dir(ltr)) { border: 0; }
      .chart:dir(ltr) { margin-block-start: 1.7em; margin-inline-start: calc(-100% * 33 / 67 - var(--_space)); }
      tr:has(.chart:dir(ltr)) > * { vertical-align: top; }
    }
  }
  .chart table { inline-size: auto; border: 0; }
  .chart.chart tr { display: table-row; border: 0; }
  .chart.chart td { display: table-cell; padding: 1px; border: 1px solid var(--_soft); inline-size: auto; }
  .chart.chart td.next { border: 0; }
  .chart input { margin: 0; inline-size: auto; min-inline-size: 100%; padding-inline: 2px; text-align: center; background: none; border-block-end-color: transparent; }
  /* Below 16px a phone zooms in on the cell. */
  @media not (any-pointer: coarse) {
    .chart input { font-size: 0.85em; }
  }
  .chart [aria-invalid] { border-block-end-color: var(--_accent); }
  .chart .next input { min-inline-size: 0; background: color-mix(in srgb, currentColor 6%, transparent); }
`;
