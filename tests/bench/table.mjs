/**
 * One thing measured: our figures, the same figures of others, and a goal where there is one.
 * @typedef {{ words: string, met: boolean }} Goal
 * @typedef {{ name: string, values: number[] }} Beside
 * @typedef {{ what: string, ours: number[], beside?: Beside[], goal?: Goal }} Row
 * @typedef {{ title: string, rows: Row[], skipped?: string[] }} Section
 */

/** The middle one of some numbers. */
export const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
};

export const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Three digits that matter, and no more than three after the point. */
export const figure = (value) => {
  if (!Number.isFinite(value)) return '–';
  const digits = value === 0 ? 0 : 2 - Math.floor(Math.log10(Math.abs(value)));
  return value.toLocaleString('en', { maximumFractionDigits: Math.min(3, Math.max(0, digits)) });
};

const figures = (values) => values.map(figure).join(', ');

/** Ours divided by theirs, figure by figure. */
export const ratios = (ours, theirs) => ours.map((value, at) => value / theirs[at]);

/**
 * A goal, and whether this value meets it.
 * @param {string} words
 * @param {number} value
 * @param {number} limit
 * @returns {Goal}
 */
export const atMost = (words, value, limit) => ({ words, met: value <= limit });

const HEAD = ['', 'ours', 'beside', 'ours ÷ beside', 'goal'];

/** @param {Row} row */
const cellsOf = ({ what, ours, beside = [], goal }) => [
  what,
  figures(ours),
  beside.map(({ name, values }) => `${name} ${figures(values)}`).join('; '),
  beside.map(({ values }) => figures(ratios(ours, values))).join('; '),
  goal ? `${goal.words}: ${goal.met ? 'met' : 'not met'}` : '',
];

/** Fixed, so that each section can be shown when it is done. */
const WIDTHS = [58, 17, 66, 16, 0];

const line = (cells) =>
  cells
    .map((cell, at) => cell.padEnd(WIDTHS[at]))
    .join('  ')
    .trimEnd();

/** The table's first line in a terminal. */
export const HEAD_LINE = line(HEAD);

/**
 * A part of the table for a terminal.
 * @param {Section} section
 */
export const asText = ({ title, rows, skipped = [] }) =>
  [title, ...rows.map((row) => line(cellsOf(row))), ...skipped.map((words) => `left out: ${words}`)].join(
    '\n',
  );

/**
 * All of it as one table in Markdown.
 * @param {Section[]} sections
 */
export const asMarkdown = (sections) => {
  const bars = (cells) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  const empty = HEAD.slice(1).map(() => '');
  return [
    bars(HEAD),
    bars(HEAD.map(() => '---')),
    ...sections.flatMap(({ title, rows, skipped = [] }) => [
      bars([`**${title}**`, ...empty]),
      ...rows.map((row) => bars(cellsOf(row))),
      ...skipped.map((words) => bars([`left out: ${words}`, ...empty])),
    ]),
  ].join('\n');
};
