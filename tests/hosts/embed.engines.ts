import { expect } from 'chai';
import { CALCULATORS, NAMES } from '../calculators.js';
import { inThisEngine } from '../engine.js';
import { LISTENING, openFrame, type Framed } from './frame.js';
import { until } from '../until.js';
import { settle } from './reading.js';

/** What is typed into the maker's live sheet: a row of which calculator. */
const typedIn = (name: string): [where: string, row: string, text: string][] =>
  name === 'worksheet'
    ? [['top', 'across', '5']]
    : CALCULATORS[name]!.typed.map(([row, text]) => [name, row, text]);

type Sheet = HTMLElementTagNameMap['quilt-top'];
const sheetsIn = (within: ParentNode): Sheet[] =>
  [...within.querySelectorAll<Sheet>('*')].filter(
    (at) => at.localName.startsWith('quilt-') && 'result' in at,
  );
const resultsIn = (within: ParentNode): string[] =>
  // A table in a page has a head, and the cells of a sheet do not.
  sheetsIn(within).map(({ result }) =>
    JSON.stringify(result).replace('Fabric | Piece | Cut size | How many\\n', ''),
  );

/** Writes in a field, and leaves it. */
const write = (field: Element, text: string): void => {
  (field as HTMLInputElement).value = text;
  for (const type of ['input', 'change'])
    field.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
};

describe('The embed maker', () => {
  for (const name of inThisEngine([...NAMES].reverse()))
    it(`${name}: each snippet is that calculator again, on a page that it is pasted into`, async () => {
      const { page, faults } = await openFrame({ src: '/demo/embed.html' });
      const live = page.querySelector('#live')!;
      await until(() => !!live.querySelector('quilt-backing:defined'));
      const press = (group: string, value: string): void =>
        page.querySelector<HTMLElement>(`[name=${group}][value=${value}]`)!.click();
      press('calculator', name);
      await until(() => !!live.querySelector(`quilt-${name}`));
      await settle(page, false);
      for (const [where, row, text] of typedIn(name)) {
        write(live.querySelector(`quilt-${where}`)!.shadowRoot!.querySelector(`[data-row=${row}]`)!, text);
        await settle(page, false);
      }
      const answers = resultsIn(live);
      expect(answers.join()).to.include('"buy"').and.not.to.include('"errors"');
      const pasted: Framed[] = [];
      for (const how of ['loader', 'classic', 'frame']) {
        press('how', how);
        write(page.querySelector('[name=folder]')!, new URL('/dist/', location.href).href);
        write(page.querySelector('[name=host]')!, location.href);
        expect(page.querySelector('#note')!.textContent).to.equal('');
        const snippet = page.querySelector<HTMLTextAreaElement>('#snippet')!.value;
        const srcdoc = `<!doctype html><html lang="en"><head>${LISTENING}</head><body><h1>A post</h1>${snippet}</body></html>`;
        const post = await openFrame({ srcdoc });
        pasted.push(post);
        const frame = post.page.querySelector('iframe');
        expect(!!frame).to.equal(how === 'frame');
        const own = (): Document => (frame ? frame.contentDocument! : post.page);
        await until(() => sheetsIn(own()).length === answers.length);
        await settle(own(), false);
        expect(resultsIn(own()), how).to.deep.equal(answers);
        if (frame) {
          const tall = (): number => Math.ceil(own().documentElement.getBoundingClientRect().height);
          await until(() => frame.clientHeight === tall());
          expect(frame.clientHeight, 'the frame is as tall as what is in it')
            .to.equal(tall())
            .and.not.to.equal(700);
        }
      }
      expect([faults, ...pasted.map((post) => post.faults)].flat()).to.deep.equal([]);
    });
});
