import { describe, expect, it } from 'vitest';
import { isPicture } from '../../src/workbook/swatch.js';

// What counts as the address of a picture is this project's own convention; the comment of `swatch` says it.
describe('a swatch', () => {
  it.each([
    ...['sand.png', 'pictures/sand.JPG', 'Wet Sand.webp', 'sand.svg?v=2', 'sand.avif#a', '../sand.jpeg'],
    ...[
      '/fabrics/42',
      './fabrics/42',
      '../42',
      '//cdn.example/42',
      'https://example.org/42',
      'HTTP://example.org',
    ],
    ...['data:image/gif;base64,R0lGODlhAQABAAAAACw=', 'blob:https://example.org/1', ' sand.png '],
  ])('%j is the address of a picture', (swatch) => expect(isPicture(swatch)).toBe(true));

  it.each([
    ...['', 'Sky Blue Print', 'sand', 'fabrics/42', 'Blue / Green', '/ Blue', 'no. 5', 'v1.5', 'sand.html'],
    ...[
      '#d9c7a3',
      'rgb(1 2 3)',
      'url(sand.png)',
      'javascript:x',
      'data:text/html,x',
      'ftp:/x',
      'a.png print',
    ],
  ])('%j is none', (swatch) => expect(isPicture(swatch)).toBe(false));
});
