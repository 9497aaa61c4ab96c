import { expect } from 'chai';
import { findingsIn, LISTENING, openFrame, type Framed } from './frame.js';
import { pageOf, SHEETS, WITHOUT_SCRIPTS } from './hostile-pages.js';
import { readingOf, settle, type Reading } from './reading.js';
import { calmReading } from './standing.js';

const readingIn = async ({ page }: Framed): Promise<Reading> => {
  await settle(page);
  return readingOf(page);
};

describe('A page whose scripts are blocked', () => {
  for (const width of [320, 1280])
    it(`shows what the author wrote inside, at ${width} px, and nothing else`, async () => {
      const { html, policy } = WITHOUT_SCRIPTS;
      const framed = await openFrame(
        { src: `/hosts/page?${new URLSearchParams({ html, policy })}` },
        { width },
      );
      const { page } = framed;
      expect({
        text: page.body.innerText.replace(/\s+/g, ' ').trim(),
        defined: [...page.querySelectorAll(':defined')].filter(({ localName }) => localName.includes('-'))
          .length,
        hidden: [...page.querySelectorAll('p, td, th, h2')].filter((at) => !at.checkVisibility()).length,
        tooWide: page.documentElement.scrollWidth > width,
      }).to.deep.equal({
        text: 'As the pattern has it: buy 3 3/4 yd of cloth 40 in wide, two panels of 66 in, one seam across. Fabric Piece Cut size How many A square 3 1/2 in 48 Its borders Sides two of 2 1/2 × 72 1/2 in. 20 blocks, 48 × 60 in. A/B A B A B 8 strips. A twin package.',
        defined: 0,
        hidden: 0,
        tooWide: false,
      });
    });
});

/** Runs a script as a module of the page. */
const run = async ({ page }: Framed, src: string): Promise<void> => {
  const element = Object.assign(page.createElement('script'), { type: 'module', src });
  const done = new Promise((done) => element.addEventListener('load', done, { once: true }));
  page.body.append(element);
  await done;
};

describe('Two versions of the script', () => {
  let newer: string;
  let older: string;
  before(async () => {
    newer = await (await fetch('/dist/quilt-reckoner.js')).text();
    older = newer.replaceAll('Copy or download', 'Copy it all');
  });
  /** An older build that had only these elements. */
  const withOnly = (...tags: string[]): string => `{
    const { define } = CustomElementRegistry.prototype;
    customElements.define = (name, made) => ${JSON.stringify(tags)}.includes(name) && define.call(customElements, name, made);
  } ${older}; delete customElements.define;`;
  const buttonsOn = (page: Document): string[] =>
    [...page.querySelectorAll('*')].flatMap((at) =>
      [...(at.shadowRoot?.querySelectorAll('button') ?? [])]
        .map(({ textContent }) => textContent.trim())
        .filter((words) => words.startsWith('Copy'))
        .map((words) => `${at.localName}: ${words}`),
    );

  it('are two: only one says what only one says', () => {
    expect(older).not.to.equal(newer);
  });

  const PAIRS: [what: string, scripts: () => string[], isOlder: (tag: string) => boolean][] = [
    ['the older first', () => [older, newer], () => true],
    ['the newer first', () => [newer, older], () => false],
    [
      'an older one that had only some of them, first',
      () => [withOnly('quilt-backing', 'quilt-top', 'quilt-fabric'), newer],
      (tag) => /backing|top/.test(tag),
    ],
    [
      'an older one that had only the worksheet, first',
      () => [withOnly('quilt-worksheet'), newer],
      (tag) => tag.includes('worksheet'),
    ],
  ];
  for (const [what, scripts, isOlder] of PAIRS)
    it(`work side by side, ${what}`, async () => {
      const framed = await openFrame({ srcdoc: pageOf(SHEETS, { script: LISTENING }) });
      const { page, faults } = framed;
      for (const code of scripts())
        await run(framed, URL.createObjectURL(new Blob([code], { type: 'text/javascript' })));
      const reading = await readingIn(framed);
      expect({
        ...reading,
        words: reading.words.map((said) => said.replace('Copy it all', 'Copy or download')),
      }).to.deep.equal(await calmReading(SHEETS));
      const buttons = buttonsOn(page);
      expect(buttons).to.have.length(11);
      for (const said of buttons) {
        const [tag, words] = said.split(': ') as [string, string];
        expect(words, tag).to.equal(isOlder(tag) ? 'Copy it all' : 'Copy or download');
      }
      // What is typed in a part of one version reaches the worksheet of the other.
      page.querySelector('quilt-worksheet quilt-top')!.setAttribute('across', '6');
      await settle(page);
      const binding = page.querySelector('quilt-worksheet quilt-binding')!;
      // geometry: six blocks of 12 in and five sashings of 2 in
      expect(binding.shadowRoot!.querySelector<HTMLInputElement>('[data-row=width]')!.value).to.equal(
        '82 in',
      );
      expect(faults).to.deep.equal([]);
    });
});

describe('A page that swaps its content without reloading', () => {
  it('fetches the next one, puts it in with its scripts, and reads as before', async () => {
    const html = pageOf(SHEETS, {
      script: `${LISTENING}<script type="module" src="/dist/quilt-reckoner.js"></script>`,
    });
    const framed = await openFrame({ srcdoc: html });
    const { page, faults } = framed;
    const before = await readingIn(framed);
    for (let turn = 0; turn < 6; turn += 1) {
      page.querySelector('quilt-backing')!.focus();
      const next = new DOMParser().parseFromString(html, 'text/html');
      page.body.replaceWith(page.adoptNode(next.body));
      // Such pages run the scripts they find again.
      await run(framed, `/dist/quilt-reckoner.js?${turn}`);
    }
    expect(await readingIn(framed)).to.deep.equal(before);
    expect(await findingsIn(framed, { rules: ['color-contrast'] })).to.deep.equal([]);
    expect(faults).to.deep.equal([]);
  });
});
