import { describe, expect, it } from 'vitest';
import { tablesWritten as cellsWritten } from '../../../src/elements/cutting/tables-written.js';

/** The texts in the cells. */
const tablesWritten = (html: string): (string[][] | undefined)[] =>
  cellsWritten(html).map((table) => table?.map((cells) => cells.map(({ text }) => text)));

const ROOT = '<template shadowrootmode="open"><slot></slot></template>';
const plan = (inside: string): string => `<quilt-cutting>${ROOT}${inside}</quilt-cutting>`;
const row = (...cells: string[]): string => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;

describe('tables in what a server wrote', () => {
  it('are read as a page reads them: heads first, feet last, every cell as text', () => {
    const table = `<div><table><caption>Low Tide</caption>
      <tfoot>${row('C', 'square')}</tfoot><tr><th>B</th><td>1&frac12; <b>in</b> &amp; <!-- no -->more</td>
      <thead>${row('Fabric', 'Piece')}</thead></table><table>${row('Z')}</table></div>`;
    expect(tablesWritten(`<!doctype html><html><body>${plan(table)}`)).toEqual([
      [
        ['Fabric', 'Piece'],
        ['B', '1½ in & more'],
        ['C', 'square'],
      ],
    ]);
  });

  it('keep what a chart needs: spans, and the way a goose flies', () => {
    const chart = `<quilt-block>${ROOT}<table><tr><td colspan=2 goose="down" class="sky">B A B</td><th rowspan="2">A</th></tr></table></quilt-block>`;
    expect(cellsWritten(chart)).toEqual([
      [
        [
          { text: 'B A B', colspan: '2', goose: 'down' },
          { text: 'A', rowspan: '2' },
        ],
      ],
    ]);
  });

  it('of a table in a cell they say only that it is there', () => {
    const table = `<table>${row('A', `<table>${row('B')}</table>`)}</table>`;
    expect(tablesWritten(plan(table))).toEqual([[['A', '<table>']]]);
  });

  it('are found in the shadow roots of other elements, and in the order of the HTML', () => {
    const one = (letter: string): string => plan(`<table>${row(letter)}</table>`);
    const html = `${one('A')}<shop-post><template shadowrootmode="open">${one('B')}</template>${one('C')}</shop-post>
<table><tr><td>${one('D')}</td></tr>${plan('moved out of it')}</table>${one('E')}`;
    expect(tablesWritten(html)).toEqual([[['A']], [['B']], [['C']], [['D']], undefined, [['E']]]);
  });

  it('do not include those in a shadow root or in another template', () => {
    const table = `<table>${row('A')}</table>`;
    const sheet = `<template shadowrootmode="open"><section>${table}</section></template>`;
    expect(tablesWritten(`<quilt-cutting list="A">${sheet}</quilt-cutting>`)).toEqual([undefined]);
    expect(tablesWritten(plan(`<template>${table}</template>`))).toEqual([undefined]);
    expect(tablesWritten(`<quilt-cutting>${sheet}<table>${row('B')}</table></quilt-cutting>`)).toEqual([
      [['B']],
    ]);
  });

  it('are none where the server wrote no cutting plan', () => {
    expect(tablesWritten('')).toEqual([]);
    expect(
      tablesWritten(
        `<!-- ${plan('')} --><quilt-cutting><table>${row('A')}</table></quilt-cutting><pre>&lt;quilt-cutting></pre>`,
      ),
    ).toEqual([]);
  });
});
