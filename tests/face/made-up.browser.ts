import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { learn } from '../../src/reckon.js';
import { misfits } from '../hosts/reading.js';
import { calm, FABRICS, PARTS } from '../elements/worksheet/quilt.js';
import { MADE_UP, madeUp, ofAnotherLanguage, otherWords } from '../words/made-up.js';
import { readCsv } from './csv.js';
import {
  all,
  EVERY,
  find,
  pressButton,
  refused,
  show,
  unfold,
  until,
  valueIn,
  writeAndLeave,
} from './fixture.js';
import type { Attributes, Sheet } from './fixture.js';

learn(madeUp);

/** What is typed into a row, or over a reckoned one where a reader can measure. */
const TYPED: Record<string, [row: string, text: string]> = {
  'quilt-backing': ['washedWidth', '30'],
  'quilt-batting': ['bedWidth', '75'],
  'quilt-binding': ['around', '400'],
  'quilt-block': ['count', '12'],
  'quilt-borders': ['border1Sides', '75'],
  'quilt-sleeve': ['width', '61 3/4'],
  'quilt-top': ['finishedWidth', '55'],
  'quilt-cutting': ['fabricWidth', '38'],
};
const MORE: Record<string, Attributes> = {
  'quilt-backing': { shrinkage: '3', price: '12.50' },
  'quilt-batting': { bed: 'twin', drop: '10', packages: '90 x 108 @ 38.50' },
};

const QUILT = [...FABRICS, ...Object.values(PARTS), '<quilt-sleeve fabric="C"></quilt-sleeve>'].join('\n');
const WHAT: Record<string, string> = {
  ...Object.fromEntries(
    Object.entries(EVERY).map(([tag, given]) => {
      const written = Object.entries({ ...given, ...MORE[tag] }).map(([name, value]) => `${name}="${value}"`);
      return [tag, `<${tag} name="amount" ${written.join(' ')}></${tag}>`];
    }),
  ),
  'quilt-worksheet': `<quilt-worksheet name="amount" currency="EUR" kits="12">${QUILT}</quilt-worksheet>`,
};

interface Spoken {
  form: HTMLFormElement;
  /** The element, and those inside it. */
  sheets: Sheet[];
}

const inLanguage = async (lang: string, html: string): Promise<Spoken> => {
  const form = await show<HTMLFormElement>(`<form lang="${lang}">${html}</form>`);
  const sheet = form.firstElementChild as Sheet;
  await calm(sheet);
  return { form, sheets: [sheet, ...sheet.querySelectorAll<Sheet>('*')].filter((at) => 'result' in at) };
};

const digits = (text: string): string =>
  (text.match(/[\d½¼¾⅓⅔⅛⅜⅝⅞./]+/g) ?? []).join(' ').replaceAll(' . ', ' ');

/** Shows lengths in these units, as a reader’s press does. */
const switchTo = async (sheet: Sheet, units: string): Promise<void> => {
  Object.assign(sheet, { shown: units });
  await sheet.updateComplete;
};

/** The author’s own words for her cloth. */
const NAMES = new Set(
  [...FABRICS.join().matchAll(/(?<=name=")[^"]+/g)]
    .flatMap(([name]) => name.split(' '))
    .concat('small', 'large'),
);

/** What stands in each row, and every number that is said beside it. */
const rowsOf = (sheet: Sheet): string[] =>
  all<HTMLInputElement>(sheet, '[data-row]').map((at) => {
    const stands = at.type === 'checkbox' ? String(at.checked) : (at.value ?? digits(at.textContent));
    return `${at.dataset['row']}: ${stands} / ${digits(at.closest('tr')!.textContent)}`;
  });

const share = (part: number, whole: number): string => (part / whole).toFixed(2);

/** Every shape of every drawing, by where it lies in the whole: the room that words take beside it may differ. */
const shapesOf = (sheet: Sheet): string[] =>
  all<SVGSVGElement>(sheet, 'svg').flatMap((svg) => {
    const shapes = [...svg.querySelectorAll<SVGPathElement>('path:not(.dimension)')];
    const boxes = shapes.map((shape) => shape.getBBox());
    const left = Math.min(...boxes.map(({ x }) => x));
    const top = Math.min(...boxes.map(({ y }) => y));
    const wide = Math.max(...boxes.map(({ x, width }) => x + width)) - left;
    const high = Math.max(...boxes.map(({ y, height }) => y + height)) - top;
    expect(Math.min(wide, high), 'a drawing has a size').to.be.greaterThan(0);
    return [
      `${shapes.length} shapes, ${svg.querySelectorAll('.dimension').length} dimension lines`,
      ...boxes.map(
        ({ x, y, width, height }, at) =>
          `${shapes[at]!.getAttribute('class')} ${share(x - left, wide)} ${share(y - top, high)} ${share(width, wide)} ${share(height, high)}`,
      ),
    ];
  });

/** The cells of the file that is downloaded. */
const csvOf = async (sheet: Sheet, button: string): Promise<string[][]> => {
  const { createObjectURL } = URL;
  const files: Blob[] = [];
  const { click } = HTMLAnchorElement.prototype;
  HTMLAnchorElement.prototype.click = () => undefined;
  URL.createObjectURL = (file: Blob) => `blob:${files.push(file)}`;
  try {
    await pressButton(sheet, button);
  } finally {
    Object.assign(HTMLAnchorElement.prototype, { click });
    Object.assign(URL, { createObjectURL });
  }
  expect(files).to.have.length(1);
  return readCsv((await files[0]!.text()).replace(/^\uFEFF/, ''));
};
const isNumber = (cell: string): boolean => /^-?\d+(\.\d+)?$/.test(cell);

/** What a form sends when its reader sends it. */
const sentBy = (form: HTMLFormElement): string => {
  const sent: string[] = [];
  form.addEventListener(
    'submit',
    (event) => {
      event.preventDefault();
      sent.push(JSON.stringify([...new FormData(form)]));
    },
    { once: true },
  );
  form.noValidate = true;
  form.requestSubmit();
  return sent.join();
};

/** Everything that has a number in it. */
const numbersOf = async ({ form, sheets }: Spoken, button: string): Promise<Record<string, unknown>> => {
  const cells = await csvOf(sheets[0]!, button);
  return {
    rows: sheets.map(rowsOf),
    // An announcement for a screen reader comes a second after a plan is ready.
    shown: sheets.map(({ shadowRoot: root }) =>
      digits(root!.textContent.replace(root!.querySelector('.unseen')?.textContent ?? '', '')),
    ),
    shapes: sheets.map(shapesOf),
    numbers: cells.map((row) => row.map((cell) => (isNumber(cell) ? cell : '')).join(';')),
    cells: cells.map((row) => row.map(digits).join(';')),
    sent: sentBy(form),
    buy: sheets.map(({ result }) => JSON.stringify(result.buy && { ...result.buy, text: '' })),
    inches: sheets.map(({ result }) => result.working.map(({ id, inches }) => `${id} ${inches}`).join('\n')),
  };
};

const inBoth = async (
  html: string,
  act: (spoken: Spoken) => Promise<unknown> = () => Promise.resolve(),
): Promise<Record<string, unknown>[]> => {
  const found = [];
  for (const [lang, button] of [
    ['en', 'Download CSV'],
    [MADE_UP, otherWords('Download CSV')],
  ] as const) {
    const spoken = await inLanguage(lang, html);
    for (const sheet of spoken.sheets) await unfold(sheet);
    await act(spoken);
    await calm(spoken.sheets[0]!);
    // What draws the whole quilt is loaded only now.
    const whole = spoken.sheets.filter(({ localName }) => localName === 'quilt-worksheet');
    for (const sheet of whole) {
      if (!find(sheet, '.whole')) await unfold(sheet);
      await until(() => !!find(sheet, '.whole svg'));
    }
    found.push(await numbersOf(spoken, button));
  }
  return found;
};

for (const [tag, html] of Object.entries(WHAT))
  describe(`${tag} in a made-up language`, () => {
    const expectAlike = ([english, other]: Record<string, unknown>[]): void => {
      for (const [what, numbers] of Object.entries(english!))
        expect(JSON.stringify(other![what], null, 1), what).to.equal(JSON.stringify(numbers, null, 1));
    };

    it('has the same numbers as in English: shown, drawn, downloaded and sent', async () => {
      const [english, other] = await inBoth(html);
      expect(english!['sent']).to.match(/^\[\["amount","\d[\d.]*"\]/);
      expect(String(english!['shapes'])).to.match(/\d shapes/);
      expect(String(english!['numbers'])).to.match(/\d/);
      expectAlike([english!, other!]);
    });

    it('has the same where something was typed in or typed over', async () => {
      const before = await inBoth(html);
      const after = await inBoth(html, async ({ sheets }) => {
        for (const sheet of sheets) {
          const typed = TYPED[sheet.localName];
          if (typed && all(sheet, `input[data-row=${typed[0]}]`).length) await writeAndLeave(sheet, ...typed);
        }
      });
      expect(JSON.stringify(after[0])).not.to.equal(JSON.stringify(before[0]));
      expectAlike(after);
    });

    it('shows no English word, whether it has an answer or something is wrong', async () => {
      const { sheets } = await inLanguage(MADE_UP, html);
      for (const sheet of sheets) await unfold(sheet);
      const expectSpoken = (): void => {
        for (const sheet of sheets) {
          const shown = all(sheet, 'section *:not(svg *), option').flatMap(({ childNodes }) =>
            [...childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE),
          );
          const said = [
            ...shown.map(({ textContent }) => textContent!),
            ...all(sheet, '[aria-label]').map((at) => at.ariaLabel!),
          ];
          // A block is called what its author calls it.
          const isOwn = (word: string): boolean =>
            NAMES.has(word) || (sheet.localName === 'quilt-block' && word === sheet.name);
          expect(
            ofAnotherLanguage(said.join(' ').replaceAll('\u00ad', '')).filter((word) => !isOwn(word)),
            sheet.localName,
          ).to.deep.equal([]);
        }
      };
      expectSpoken();
      const [first] = sheets;
      const row = tag === 'quilt-worksheet' ? 'kits' : 'fabricWidth';
      await writeAndLeave(first!, tag === 'quilt-batting' ? 'overage' : row, '-5');
      expect(refused(first!).errors.length).to.be.greaterThan(0);
      expectSpoken();
    });
  });

/** In a cell to type in a long text moves as its reader does. */
const isNoTyping = (misfit: string): boolean => !/ input\.[^“]*“” is cut off:/.test(misfit);

/** Numbers that stand on two lines. */
const brokenNumbers = (sheet: Sheet): string[] => {
  const range = document.createRange();
  return all(sheet, 'section *:not(svg *, option, .unseen)')
    .flatMap(({ childNodes }) => [...childNodes])
    .filter((node): node is Text => node.nodeType === Node.TEXT_NODE)
    .flatMap((node) =>
      [...node.data.matchAll(/[\d.,/]*\d/g)]
        .filter(({ index, 0: number }) => {
          range.setStart(node, index);
          range.setEnd(node, index + number.length);
          return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1;
        })
        .map(([number]) => `${number} in “${node.data.trim()}”`),
    );
};

describe('what an author chose and locks', () => {
  it('is shown in words, and not in the codes that she wrote', async () => {
    const html =
      '<quilt-borders width="58" length="70" borders="2, 3" lock="grain corners" corners="squares, mitred"></quilt-borders>';
    const english = (await inLanguage('en', html)).sheets[0]!;
    expect([valueIn(english, 'grain'), valueIn(english, 'corners')]).to.deep.equal([
      'across the cloth',
      'corner squares, mitred',
    ]);
    const [other] = (
      await inLanguage(
        MADE_UP,
        '<quilt-backing width="58" length="70" one-way lock="one-way"></quilt-backing>',
      )
    ).sheets;
    expect(valueIn(other!, 'oneWay')).to.equal(otherWords('yes'));
  });
});

describe('in words 40 % longer than English nothing is cut off, and nothing scrolls sideways', () => {
  after(() => setViewport({ width: 800, height: 600 }));

  for (const width of [320, 768, 1280])
    for (const units of ['in', 'cm'])
      for (const [tag, html] of Object.entries(WHAT))
        it(`${tag} in ${units}, at ${width} px`, async () => {
          await setViewport({ width, height: 800 });
          const { sheets } = await inLanguage(MADE_UP, html);
          for (const sheet of sheets) {
            await unfold(sheet);
            await switchTo(sheet, units);
          }
          await calm(sheets[0]!);
          expect(innerWidth).to.equal(width);
          expect(misfits().filter(isNoTyping)).to.deep.equal([]);
          expect(sheets.flatMap(brokenNumbers)).to.deep.equal([]);
        });
});
