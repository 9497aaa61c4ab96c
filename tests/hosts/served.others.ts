import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { until } from '../until.js';
import { LISTENING, openFrame, type Framed } from './frame.js';
import { BLOCKS, blog, QUILT, reserved, TABLE, WORKSHEET, WRITTEN } from './quilt-parts.js';
import { settle } from './reading.js';
import { isAlive, kept, look, mark, sheetsIn } from './served.js';
import { placesIn, shownTwice, WATCHING } from './watching.js';

const SCRIPTS = {
  hydrating: '/hosts/hydrating.js',
  modules: '/hosts/modules.js',
  bundle: '/dist/quilt-reckoner.js',
};

/** A page from a server, as it is before its script has come. */
const served = async (written: string, { way = 'served', head = '' } = {}): Promise<Framed> => {
  const response = await fetch(`/hosts/${way}?markup=${encodeURIComponent(written)}`);
  const srcdoc = blog(await response.text(), { head: LISTENING + WATCHING + head });
  const framed = await openFrame({ srcdoc }, { height: 3000 });
  await shownTwice(framed);
  return framed;
};
/** tests/pages/server.page.ts has the same for Chromium, with all other elements. */
const WAYS = ['hydrating', 'bundle'] as const;
const TAGS = [...Object.keys(WRITTEN), 'quilt-worksheet'];

/** Lets the script come, and waits until the page has come to rest. */
const come = async ({ page }: Framed, script: keyof typeof SCRIPTS): Promise<void> => {
  const loaded = new Promise((done, failed) => {
    const element = Object.assign(page.createElement('script'), { type: 'module', src: SCRIPTS[script] });
    element.addEventListener('load', done);
    element.addEventListener('error', failed);
    page.body.append(element);
  });
  await loaded;
  await until(() => isAlive(page));
  await settle(page, false);
};

/** How often the words below moved between two frames in which they were shown, from before the script came. */
const movesOf = async (framed: Framed): Promise<number> => {
  const { places, isShownBefore } = await placesIn(framed);
  expect(isShownBefore).to.equal(true);
  return places.length - 1;
};

describe('a page that a server wrote', () => {
  for (const [tag, written] of Object.entries(WRITTEN))
    for (const script of WAYS)
      it(`${tag} comes alive in place (${script})`, async () => {
        const framed = await served(written);
        const { page, faults } = framed;
        const before = look(tag, page);
        expect(before.isDefined).to.equal(false);
        expect(before.boxes['svg']![3]).to.be.greaterThan(50);
        mark(tag, page);
        await come(framed, script);
        const after = look(tag, page);
        expect(after.boxes).to.deep.equal(before.boxes);
        expect(after.isDefined).to.equal(true);
        expect(await movesOf(framed)).to.equal(0);
        expect(sheetsIn(tag, page)).to.equal(1);
        const [left, all] = kept(page);
        expect(all).to.be.greaterThan(30);
        // The others draw again what the server drew.
        if (script === 'hydrating') expect([left, after.html]).to.deep.equal([all, before.html]);
        expect(faults).to.deep.equal([]);
      });

  for (const script of WAYS)
    it(`keeps what a reader typed before the script came, and where she was (${script})`, async () => {
      const framed = await served(WRITTEN['quilt-backing']!);
      const { page, faults } = framed;
      const element = page.querySelector('quilt-backing')!;
      element.shadowRoot!.querySelector<HTMLInputElement>('#width')!.select();
      element.shadowRoot!.querySelector<HTMLInputElement>('#width')!.focus();
      await sendKeys({ type: '30' });
      expect(element.matches(':defined')).to.equal(false);
      await come(framed, script);
      await sendKeys({ type: ' in' });
      const active = element.shadowRoot!.activeElement as HTMLInputElement;
      expect([active.id, active.value, element.width]).to.deep.equal(['width', '30 in', '30 in']);
      expect(faults).to.deep.equal([]);
    });

  for (const [tag, written] of [
    ['quilt-cutting', TABLE],
    ['quilt-worksheet', WORKSHEET],
  ] as const)
    for (const script of WAYS)
      it(`${tag} is whole once the script is there, whatever stands inside, and moves nothing where its room is kept (${script})`, async () => {
        const framed = await served(written, { head: reserved(...TAGS) });
        const { page, faults } = framed;
        await come(framed, script);
        const said = look(tag, page).html;
        expect(said).to.match(/(Buy|In all) [^]*\d/);
        expect(said).not.to.include('to get an answer');
        for (const part of TAGS)
          if (written.includes(`<${part}`)) expect(sheetsIn(part, page), part).to.equal(1);
        expect(await movesOf(framed)).to.equal(0);
        expect(faults).to.deep.equal([]);
      });

  for (const [what, written] of Object.entries({ WORKSHEET, QUILT, TABLE, BLOCKS }))
    for (const script of WAYS)
      it(`what is written whole (${what}) says the same in the same place once it is alive (${script})`, async () => {
        const framed = await served(written, { way: 'whole' });
        const { page, faults } = framed;
        const tags = TAGS.filter((tag) => page.querySelector(tag));
        const before = tags.map((tag) => look(tag, page));
        for (const { html, isDefined } of before) {
          expect(isDefined).to.equal(false);
          expect(html).to.match(/(Buy|\w+ alone|In all|Finished) [^]*\d/);
        }
        await come(framed, script);
        expect(tags.map((tag) => look(tag, page))).to.deep.equal(
          before.map((seen) => ({ ...seen, isDefined: true })),
        );
        for (const tag of tags) expect(sheetsIn(tag, page), tag).to.equal(1);
        expect(await movesOf(framed)).to.equal(0);
        expect(faults).to.deep.equal([]);
      });

  it('is made anew, once, where the script is there before its markup', async () => {
    for (const written of [WRITTEN['quilt-backing']!, TABLE, WORKSHEET]) {
      const head = '<script src="/dist/quilt-reckoner.classic.js"></script>';
      const { page, faults } = await served(written, { way: 'whole', head });
      await settle(page, false);
      const tags = TAGS.filter((tag) => page.querySelector(tag));
      for (const tag of tags) {
        expect(sheetsIn(tag, page), tag).to.equal(1);
        expect(look(tag, page).html).to.match(/(Buy|\w+ alone|In all|Finished|So far) [^]*\d/);
      }
      expect(faults).to.deep.equal([]);
    }
  });
});
