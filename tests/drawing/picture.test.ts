import { render } from '@lit-labs/ssr';
import { collectResultSync } from '@lit-labs/ssr/lib/render-result.js';
import { describe, expect, test } from 'vitest';
import { draw } from '../../src/face/drawing.js';
import { ownWords } from '../../src/ledger/own-words.js';
import type { Picture } from '../../src/ledger/picture.js';
import { exact } from '../../src/measure/exact.js';
import { english } from '../sentences.js';

type Outline = Record<'x' | 'y' | 'wide' | 'tall', number>;

/** What is drawn: the sheet it is drawn on, and the outlines of its boxes, a list for each path. */
const drawn = (picture: Picture): { sheet: [number, number]; paths: Outline[][]; markup: string } => {
  const markup = collectResultSync(render(draw(picture, english())));
  const sheet = /viewBox="0 0 (\S+) (\S+)"/.exec(markup)!.slice(1).map(Number) as [number, number];
  const paths = [...markup.matchAll(/<path class="\w+" d="([^"]*z)"/g)].map(([, d]) =>
    [...d!.matchAll(/M(\S+) (\S+)h(\S+)v(\S+)h\S+z/g)].map(([, ...numbers]): Outline => {
      const [x, y, wide, tall] = numbers.map(Number);
      return { x: x!, y: y!, wide: wide!, tall: tall! };
    }),
  );
  return { sheet, paths, markup };
};

const cloth = (width: number, height: number): Picture => ({
  title: ownWords('Cloth'),
  width,
  height,
  boxes: [{ x: 0, y: 0, width, height, is: 'cloth' }],
});

describe('how large a picture is', () => {
  // The sizes are our own choice; the geometry is that both sides have one scale.
  test('a wide drawing fills 220, with an edge of 6 on each side, and is to scale', () => {
    const { sheet, paths } = drawn(cloth(104, 26));
    expect(sheet).toEqual([220, 52 + 12]);
    expect(paths).toEqual([[{ x: 6, y: 6, wide: 208, tall: 52 }]]);
  });

  test('a tall drawing is at most 175 high, so that the rest stays on the screen', () => {
    const { sheet, paths } = drawn(cloth(10, 100));
    expect(sheet[1]).toBe(175 + 12);
    expect(paths).toEqual([[expect.objectContaining({ wide: 17.5, tall: 175 })]]);
  });

  test('a narrow drawing is in the middle, in a box that holds a line of words', () => {
    const { sheet, paths } = drawn(cloth(1, 100));
    const [{ x, wide }] = paths[0] as [Outline];
    // Three fifths of 220.
    expect(sheet[0]).toBe(132);
    expect(x + wide / 2).toBeCloseTo(132 / 2, 1);
  });

  test('a dimension line makes room for itself on its side alone', () => {
    const plain = drawn(cloth(10, 100)).sheet[1];
    const line = { from: 0, to: 10, text: exact(10) };
    const of = (...sides: ('top' | 'bottom')[]): number =>
      drawn({ ...cloth(10, 100), dimensions: sides.map((side) => ({ ...line, side })) }).sheet[1];
    const room = of('top') - plain;
    // Words of 11 px and the line itself.
    expect(room).toBeGreaterThan(11);
    expect(of('bottom') - plain).toBe(room);
    expect(of('top', 'bottom') - plain).toBe(2 * room);
  });
});

describe('boxes', () => {
  const boxes: Picture['boxes'] = [
    { x: 0, y: 0, width: 60, height: 30, is: 'piece' },
    { x: 60, y: 0, width: 44, height: 30, is: 'piece' },
    { x: 0, y: 30, width: 104, height: 32, is: 'cloth' },
  ];

  test('lie where they are, at the picture’s scale', () => {
    // Geometry: 208 for 104 in, 2 for an inch.
    expect(drawn({ ...cloth(104, 62), boxes }).paths).toEqual([
      [{ x: 6, y: 6, wide: 120, tall: 60 }],
      [{ x: 126, y: 6, wide: 88, tall: 60 }],
      [{ x: 6, y: 66, wide: 208, tall: 64 }],
    ]);
  });

  test('that do not overlap are one path for each look', () => {
    const { paths } = drawn({ ...cloth(104, 62), boxes, isTiled: true });
    expect(paths.map((outlines) => outlines.length)).toEqual([2, 1]);
  });

  test('words stand in them where they fit: along, upright, in short, or not at all', () => {
    const words = (width: number, height: number): (string | undefined)[] =>
      drawn({
        ...cloth(124, 62),
        boxes: [
          { x: 0, y: 0, width, height, is: 'piece', label: ownWords('rectangle'), short: ownWords('3 × 5') },
        ],
      })
        .markup.match(/<text transform="([^"]*)"[^>]*>.*<\/text>/)
        ?.map((part) => part.replace(/<!--.*?-->|<\/?text[^>]*>/g, '')) ?? [];
    // Two to an inch: nine letters take some 60, five some 37, and a line 11.
    expect(words(40, 20)).toEqual(['rectangle', expect.not.stringContaining('rotate')]);
    expect(words(20, 40)).toEqual(['rectangle', expect.stringContaining('rotate')]);
    expect(words(20, 20)).toEqual(['3 × 5', expect.not.stringContaining('rotate')]);
    expect(words(10, 10)).toEqual([]);
  });
});
