import { describe, expect, it, vi } from 'vitest';
import { reckon } from '../../src/calculators/backing/reckon.js';
import { backingFields } from '../../src/calculators/backing/shape.js';
import { ownWords } from '../../src/ledger/own-words.js';
import { learn, reckonBacking, reckonBorders } from '../../src/reckon.js';
import { de } from '../../src/words/de/de.js';
import { backing } from '../../src/words/en/backing.js';
import { batting } from '../../src/words/en/batting.js';
import { binding } from '../../src/words/en/binding.js';
import { block } from '../../src/words/en/block.js';
import { borders } from '../../src/words/en/borders.js';
import { common } from '../../src/words/en/common.js';
import { cutting } from '../../src/words/en/cutting.js';
import { inEnglish } from '../../src/words/en/english.js';
import { face } from '../../src/words/en/face.js';
import { spreadsheet } from '../../src/words/en/spreadsheet.js';
import { sleeve } from '../../src/words/en/sleeve.js';
import { top } from '../../src/words/en/top.js';
import { worksheet } from '../../src/words/en/worksheet.js';
import type { Language } from '../../src/words/language.js';
import { Teller, type Forms } from '../../src/words/teller.js';
import { told } from '../../src/words/told.js';
import { english } from '../sentences.js';

const QUILT = { width: 58, length: 70, price: '12.50' };

describe('a result in words', () => {
  const t = english(backing);

  it('says nothing before it is read, and each part once', () => {
    const say = vi.spyOn(t, 'say');
    const result = told(reckon(QUILT), backingFields, t);
    expect(Object.keys(result)).toContain('summary');
    expect(say).not.toHaveBeenCalled();
    const { summary } = result as { summary: string };
    expect(summary).toMatch(/^\d panels/);
    const times = say.mock.calls.length;
    expect((result as { summary: string }).summary).toBe(summary);
    expect(say.mock.calls.length).toBe(times);
    say.mockRestore();
  });

  it('is plain data: what JSON makes of it is the same', () => {
    const result: unknown = told(reckon(QUILT), backingFields, t);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    expect(JSON.stringify(result)).not.toContain('"used"');
    expect(result).toMatchObject({ fabric: '132', buy: { inches: '135', unit: 'yd' } });
  });

  it('says in words what is chosen and ticked, with the codes beside them', () => {
    learn(de);
    const rows = (lang: string): unknown[] =>
      reckonBorders({ width: 50, length: 60, borders: '2', corners: 'ends-first', lang })
        .working.concat(reckonBacking({ width: 50, length: 60, oneWay: true, lang }).working)
        .filter(({ code }) => code)
        .map(({ id, value, code }) => [id, value, code]);
    expect(rows('en')).toEqual([
      ['corners', 'ends first', 'ends-first'],
      ['grain', 'across the cloth', 'across'],
      ['join', 'at 45°', 'diagonal'],
      ['oneWay', 'yes', 'yes'],
      ['piecedStrip', 'no', 'no'],
    ]);
    expect(rows('de')).toEqual([
      ['corners', de.calculators.borders.options.corners['ends-first'], 'ends-first'],
      ['grain', de.calculators.borders.options.grain.across, 'across'],
      ['join', de.common.options.join.diagonal, 'diagonal'],
      ['oneWay', 'ja', 'yes'],
      ['piecedStrip', 'nein', 'no'],
    ]);
  });

  it('lists for an author the codes that she may write', () => {
    const { errors } = reckonBorders({ width: 50, length: 60, borders: '2', corners: 'round' });
    expect(errors).toEqual([
      {
        input: 'corners',
        message: '“round” is not one of the choices. Write sides-first, ends-first, squares or mitred.',
      },
    ]);
  });

  it('has its rows and what is wrong, and no answer, where an input cannot be used', () => {
    const result = told(reckon({ width: 'wide', length: 70 }), backingFields, t);
    expect(Object.keys(result).sort()).toEqual(['errors', 'working']);
    expect(result.errors).toMatchObject([{ input: 'width' }]);
    expect(result.working.map(({ id }) => id)).toEqual(Object.keys(backingFields));
  });
});

describe('so many of something', () => {
  const speaking = (lang: string): Teller =>
    new Teller({ ...inEnglish(backing), lang }, { units: 'in' }, lang);
  const STRIPS: Forms = { one: 'pasek', few: 'paski', many: 'pasków', other: 'paska' };

  // CLDR's plural rules: Polish has few for 2 to 4, 22 to 24 …, and many for the others.
  it.each([
    [1, '1 pasek'],
    [3, '3 paski'],
    [5, '5 pasków'],
    [22, '22 paski'],
  ])('%i takes the form that its language has for it', (count, words) => {
    expect(speaking('pl').many(count, STRIPS)).toBe(words);
  });

  it('takes what holds for the rest where a form is not given', () => {
    expect([0, 1, 2].map((count) => speaking('en').many(count, { one: 'strip', other: 'strips' }))).toEqual([
      '0 strips',
      '1 strip',
      '2 strips',
    ]);
    expect(speaking('en').many(1, { other: 'sheep' })).toBe('1 sheep');
  });
});

describe('a language', () => {
  // Made up: English with other words in a few places.
  const language: Language = {
    common: {
      ...common,
      lang: 'qab',
      labels: { ...common.labels, buy: 'Kup' },
      sentences: { ...common.sentences, missing: ({ what }, t) => `${t.label(what)}?` },
    },
    face,
    spreadsheet,
    calculators: {
      ...{ batting, binding, block, borders, cutting, sleeve, top, worksheet },
      backing: { ...backing, labels: { ...backing.labels, panels: 'Panely' } },
    },
  };
  const labelIn = (lang: string, row: string): string | undefined =>
    reckonBacking({ ...QUILT, lang }).working.find(({ id }) => id === row)?.label;

  it('is English as long as it is not learned', () => {
    expect(labelIn('qab', 'buy')).toBe(labelIn('en', 'buy'));
  });

  it('is spoken from then on, in its regions too, and nowhere else', () => {
    learn(language);
    for (const lang of ['qab', 'QAB', 'qab-XX'])
      expect([labelIn(lang, 'buy'), labelIn(lang, 'panels')]).toEqual(['Kup', 'Panely']);
    for (const lang of ['en', 'qa', 'qabb', 'fr', ''])
      expect([labelIn(lang, 'buy'), labelIn(lang, 'panels')]).toEqual([
        common.labels.buy,
        backing.labels.panels,
      ]);
    const { errors } = reckonBacking({ length: 70, lang: 'qab' });
    expect(errors).toEqual([{ input: 'width', message: `${common.labels.width}?` }]);
  });

  it('says what a person wrote as it is', () => {
    expect(english().say(ownWords('A <b> “B”'))).toBe('A <b> “B”');
  });
});
