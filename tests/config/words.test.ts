import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { SETUP_LIMIT } from './limits.mjs';
import { projectLinter } from './linter.js';

const eslint = projectLinter();

/** Whether the linter finds this fault in each of these lines, in a file of that name. */
const faulty = async (rule: string, lines: string[], file: string): Promise<string[]> => {
  const [result] = await eslint.lintText(lines.join('\n'), { filePath: `${ROOT}${file}` });
  const fatal = result?.messages.filter(({ fatal }) => fatal);
  expect(fatal).toEqual([]);
  const found = result?.messages.filter(({ ruleId }) => ruleId === `quilt/${rule}`) ?? [];
  return [...new Set(found.map(({ line }) => lines[line - 1] ?? ''))];
};

describe('words stand apart', () => {
  const SENTENCES = [
    `export const a = 'Two words';`,
    `export const b = { label: 'Cloth needed' };`,
    'export const c = `${1} panels side by side`;',
    'export const d = (t: string): string => `${t}, cut across`;',
    'export const e = html`<p class="note">Measure it again</p>`;',
    'export const f = svg`<text>Quilt top</text>`;',
    `export const g = fail('This is wrong');`,
    `export const h = () => { throw new Error('This is wrong'); };`,
    `export const i = 'Größe über alles';`,
    `export const j = 'Width, then length';`,
  ];
  const NONE = [
    `import { exact } from '../measure/exact.js';`,
    `export { type Two } from './two words.js';`,
    `export type Words = 'Two words';`,
    `export const a = 'one';`,
    `export const b = 'fat-quarter';`,
    'export const c = `${1} × ${2}`;',
    'export const d = css`.answer { margin: 0 auto; }`;',
    `export const e = new RegExp('fat quarter');`,
    'export const f = /how many|number of/;',
    'export const g = html`<p class="answer large" part="one two">${1}</p>`;',
    'export const h = html`<!-- a comment stands here --><b>${1}</b>`;',
    `export const i = exact('12 1/2');`,
  ];

  it(
    'is what the linter says of every sentence outside src/words/',
    async () => {
      expect(await faulty('words-stand-apart', [...SENTENCES, ...NONE], 'src/ledger/shop.ts')).toEqual(
        SENTENCES,
      );
      expect(await faulty('words-stand-apart', [...NONE, ...SENTENCES], 'src/face/face.ts')).toEqual(
        SENTENCES,
      );
    },
    SETUP_LIMIT,
  );

  it(
    'and nothing of those inside it',
    async () => {
      expect(await faulty('words-stand-apart', SENTENCES, 'src/words/en/common.ts')).toEqual([]);
    },
    SETUP_LIMIT,
  );
});

describe('words are not read', () => {
  const READ = [
    `export const a = row.how.startsWith('58');`,
    `export const b = row.label === one.label;`,
    `export const c = t.say(message).includes('cloth');`,
    `export const d = this.teller.money(cost).replaceAll(',', '').length && t.value(buy).split(' ');`,
    `export const e = /missing/.test(issue.message);`,
    `export const f = result.summary !== 'Nothing yet.';`,
    `export const g = t.bought(buy).slice(1);`,
    `export const h = picture.caption.match(/\\d+/);`,
    `export const i = teller.label(what) == '';`,
  ];
  const NOT_READ = [
    `export const a = row.id.startsWith('border');`,
    `export const b = row.role === 'measured';`,
    `export const c = issue.code === 'missing';`,
    `export const d = t.say(message);`,
    `export const e = picture.caption === undefined;`,
    `export const f = [t.say(message), row.how].join(' ');`,
    `export const g = letters.includes(letter);`,
    `export const h = row.how instanceof Message;`,
  ];

  it(
    'is what the linter says wherever something shown is tested or taken apart',
    async () => {
      expect(await faulty('words-are-not-read', [...READ, ...NOT_READ], 'src/face/face.ts')).toEqual(READ);
    },
    SETUP_LIMIT,
  );

  it(
    'and nothing where sentences are made',
    async () => {
      expect(await faulty('words-are-not-read', READ, 'src/words/en/common.ts')).toEqual([]);
    },
    SETUP_LIMIT,
  );
});
