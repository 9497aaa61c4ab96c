import { beforeAll, describe, expect, test } from 'vitest';
import { readCutList } from '../../src/calculators/cutting/cut-list.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import { Message } from '../../src/measure/message.js';
import { parseLength, splitList, splitSize } from '../../src/measure/parse.js';
import { parseStep } from '../../src/measure/shop.js';
import { toUnit } from '../../src/measure/units.js';
import { learn, reckonBacking, reckonBatting, reckonBorders, reckonCutting } from '../../src/reckon.js';
import { de } from '../../src/words/de/de.js';
import * as examples from '../../src/words/de/examples.js';
import { inGerman } from './german.js';
import { textsIn } from './messages.js';

const GERMAN = { units: 'cm', comma: true } as const;
const PAGE = { units: 'cm', lang: 'de', width: 150, length: 200 } as const;

beforeAll(() => learn(de));

describe('an example in German', () => {
  test('is read on a German page', () => {
    for (const text of [
      ...examples.LENGTHS,
      ...examples.TOGETHER,
      examples.SUM,
      examples.PRODUCT,
      examples.BRACKETED,
    ])
      expect(parseLength(text, GERMAN), text).toHaveProperty('ok', true);
    for (const text of examples.STEPS) expect(parseStep(text, GERMAN), text).toHaveProperty('ok', true);
    expect(splitList(examples.SEVERAL, true)).toEqual(['5 cm', '11,5 cm']);
    for (const text of [examples.SIZE, examples.SHEET])
      for (const side of splitSize(text) ?? [])
        expect(parseLength(side, GERMAN), text).toHaveProperty('ok', true);
    expect(reckonBatting({ ...PAGE, packages: examples.PACKAGE }).buy?.text).toBe(
      '1 Packung groß, 230 × 250 cm',
    );
    expect(reckonBacking({ ...PAGE, price: examples.PRICE }).errors).toBe(undefined);
    const planned = reckonCutting({ ...PAGE, list: examples.CUT_LINE, sheet: examples.SHEET });
    expect(planned.buy?.text).toBe('1 Stoffstück, 45 × 50 cm');
    expect(reckonCutting({ ...PAGE, list: examples.CUT_LINE, sheet: 'Fat Eighth' }).buy?.text).toBe(
      '2 Fat Eighths',
    );
  });

  test('of a length is read in every sentence', () => {
    const sentences = textsIn(de);
    const written = sentences.flatMap(([, text]) => [...text.matchAll(/Beispiel (\d[\d ,/]*(?:cm|in)?)/g)]);
    expect(written.length).toBeGreaterThan(5);
    for (const [, text = ''] of written) expect(parseLength(text, GERMAN), text).toHaveProperty('ok', true);
  });

  test('has a point where German is written with one', () => {
    const message = new Message('notLength', { text: 'abc' });
    expect(inGerman('backing', GERMAN).say(message)).toContain('52,5');
    expect(inGerman('backing', { units: 'cm' }, 'de-CH').say(message)).toContain('52.5');
    const [error] = reckonBorders({ ...PAGE, lang: 'de-CH' }).errors ?? [];
    expect(error?.message).toContain('5; 11.5 cm');
  });
});

describe('a cut list headed in German', () => {
  const inCm = (length: Exact): number => toUnit(length, 'cm').valueOf();
  const read = (list: string): unknown[][] =>
    readCutList(list, { style: GERMAN, mark: exact(5, 127), seam: exact(50, 127) }).map(
      ({ fabric, width, length, count, kind }) => [fabric, inCm(width), inCm(length), count, kind],
    );

  test.each([
    'Stoff | Teil | Zuschnitt | Anzahl',
    'Farbe | Stück | Maß | Menge',
    'Buchstabe | Patch | Größe | Stück',
    'Stoffname | Form | Zuschnittmaß | Wie viele',
    'Stofffarbe | Bezeichnung | Zuschnitt (Breite × Höhe) | Stückzahl',
    'Stoff | Patchname | Patchgröße in cm | Stk.',
    'STOFF | FÜR | MASSE | ANZAHL',
  ])('%s', (head) => {
    expect(read(`${head}\nA | Kante | 6,5 x 16,5 | 40`)).toEqual([['A', 6.5, 16.5, 40, 'rectangle']]);
  });

  test('may have its columns in any order, and one for each side', () => {
    for (const head of [
      'Anzahl | Länge | Breite | Teil | Stoff',
      'Stück | Höhe (cm) | Zuschnittbreite | Patch | Farbe',
    ])
      expect(read(`${head}\n40 | 16,5 | 6,5 | Kante | A`)).toEqual([['A', 6.5, 16.5, 40, 'rectangle']]);
  });

  test.each([
    ['Halbquadrat-Dreiecke | 10 cm | 24', 10, 12, 'half'],
    ['halbe Quadrate, fertig | 8 | 24', 11.5, 12, 'half'],
    ['Viertelquadrat-Dreieck | 10 | 9', 10, 3, 'quarter'],
    ['Quadrate für Halbquadrat-Dreiecke | 10 | 12', 10, 12, 'half'],
    ['Quadrat | 8 cm (fertig) | 4', 10, 4, 'rectangle'],
    ['Quadrat | 8 ohne Nahtzugabe | 4', 10, 4, 'rectangle'],
    ['Quadrat | 8 cm breit x 8 cm lang, mit Nahtzugabe | 4', 8, 4, 'rectangle'],
    ['Quadrat | fertig zugeschnitten 8 | 4', 8, 4, 'rectangle'],
  ])('may say %s', (line, side, count, kind) => {
    const [first = []] = read(`A | ${line}`);
    expect(first.slice(3)).toEqual([count, kind]);
    expect(first[1]).toBeCloseTo(side, 6);
  });

  test('may say in its head that sizes are finished ones', () => {
    expect(read('Stoff | Teil | Fertigmaß | Anzahl\nA | Kante | 6 x 16 | 4')).toEqual([
      ['A', 8, 18, 4, 'rectangle'],
    ]);
  });
});
