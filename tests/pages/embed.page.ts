import type { Frame, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CALCULATORS, NAMES } from '../calculators.js';
import { once } from '../tools/once.mjs';
import { ROOT } from '../tools/run.mjs';
import { serve } from '../tools/serve.mjs';
import { findingsOn } from './axe.js';
import { site, type Visited, writeIn } from './site.js';

/** The page that a snippet is pasted into is of `site`; the maker and the frame's files are of another origin. */
const { open, openWith, addressOf } = site();
/** The origin of the page that a snippet is pasted into. */
const hostOf = (): string => new URL(addressOf('/')).origin;
let files: Awaited<ReturnType<typeof serve>>;
let elsewhere: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  files = await serve();
  elsewhere = await serve();
});
afterAll(() => {
  files.close();
  elsewhere.close();
});

interface Sheet extends HTMLElement {
  result: { buy?: { text: string }; errors?: unknown; cuts?: { text: string }[]; fabrics?: object[] };
}
/** What is typed into the maker's live sheet: a row of which calculator, and what. */
const typedIn = (name: string): [where: string, row: string, text: string][] =>
  CALCULATORS[name]?.typed.map(([row, text]) => [name, row, text]) ?? [
    ['top', 'across', '5'],
    ['backing', 'fabricWidth', '106'],
  ];
const FORMS = ['loader', 'classic', 'frame'] as const;
type Form = (typeof FORMS)[number];

const write = (page: Page, selector: string, text: string): Promise<void> =>
  writeIn(page, selector, text, 'Tab');
const tile = (page: Page, group: string, value: string): Promise<void> =>
  page.$eval(`[name=${group}][value=${value}]`, (at) => (at as HTMLInputElement).click());
const snippetIn = (page: Page): Promise<string> =>
  page.$eval('#snippet', (at) => (at as HTMLTextAreaElement).value);

/** What all sheets of a page hold, as text; waits until each has something to buy. */
const resultsIn = async (page: Page | Frame): Promise<string[]> => {
  const sheets = (): Sheet[] =>
    [...document.querySelectorAll<Sheet>('*')].filter(({ localName }) => /^quilt-(?!fabric)/.test(localName));
  const source = `(${sheets.toString()})()`;
  await page.waitForFunction(`${source}.length && ${source}.every((at) => at.result?.buy)`);
  const results = (await page.evaluate(`${source}.map((at) => JSON.stringify(at.result))`)) as string[];
  // A table in a page has a head, and the cells of a sheet do not.
  return results.map((text) => text.replace('Fabric | Piece | Cut size | How many\\n', ''));
};

/** The maker as it opens, in the page or on a phone. */
const openMaker = async ({ isPhone = false } = {}): Promise<Visited> => {
  const opened = await open('about:blank');
  const { page } = opened;
  if (isPhone) await page.setViewport({ width: 320, height: 640, isMobile: true, hasTouch: true });
  await page.goto(`${files.address}/embed.html`);
  await page.waitForSelector('#live quilt-backing:defined');
  return opened;
};

/** The maker with this calculator set up by hand. */
const maker = async (name: string, how = {}): Promise<Visited> => {
  const opened = await openMaker(how);
  const { page } = opened;
  await tile(page, 'calculator', name);
  for (const [where, row, text] of typedIn(name))
    await write(page, `#live quilt-${where} >>> [data-row=${row}]`, text);
  return opened;
};

/** The snippet of this form. The loader’s scripts come from the page's own site; a frame's from wherever they are. */
const choose = async (page: Page, form: Form): Promise<string> => {
  await tile(page, 'how', form);
  await write(page, '[name=folder]', form === 'frame' ? `${files.address}/dist` : `${hostOf()}/dist/`);
  if (form === 'frame') await write(page, '[name=host]', `${hostOf()}/some/page.html`);
  return snippetIn(page);
};

const frameIn = (page: Page): Frame => page.frames().find((frame) => frame.url().startsWith(files.address))!;
const heightOf = (page: Page): Promise<number> =>
  page.$eval('iframe', (at) => at.getBoundingClientRect().height);
/** Waits until the frame is as tall as its content: no scroll bar, no empty room. */
const fits = async (page: Page): Promise<void> => {
  await frameIn(page).waitForFunction(
    () =>
      document.documentElement.scrollHeight === innerHeight &&
      Math.ceil(document.documentElement.getBoundingClientRect().height) === innerHeight,
  );
};

/** Once all messages that a page and its frames have sent to it so far have arrived. */
const allArrived = async (page: Page): Promise<void> => {
  const frames = page.frames();
  await page.evaluate((count) => {
    const arrived = new Promise((done) => {
      let left = count;
      addEventListener('message', ({ data }) => data === 'arrived' && --left === 0 && done(undefined));
    });
    Object.assign(window, { arrived });
  }, frames.length);
  for (const frame of frames) await frame.evaluate(() => parent.postMessage('arrived', '*'));
  await page.evaluate(() => (window as unknown as { arrived: Promise<unknown> }).arrived);
};

describe('the embed maker', () => {
  it.each(NAMES)('%s: each snippet is that calculator again, on another site', async (name) => {
    const { page, faults } = await maker(name);
    const answers = await resultsIn(page);
    const { buy, cuts = [] } = JSON.parse(answers[0]!) as Sheet['result'];

    for (const form of FORMS) {
      const snippet = await choose(page, form);
      expect(await page.$eval('#note', (at) => at.textContent)).toBe('');
      const pasted = await openWith(`<main><h1>A post</h1>${snippet}</main>`);
      const own = form === 'frame' ? frameIn(pasted.page) : pasted.page;
      expect(new URL(own.url()).origin === hostOf(), 'on the page’s own site').toBe(form !== 'frame');
      expect(await resultsIn(own), form).toEqual(answers);
      if (form === 'frame') await fits(pasted.page);
      else expect(await pasted.page.$eval('main', (at) => at.innerText)).not.toMatch(/Buy|×/);

      await pasted.page.setJavaScriptEnabled(false);
      await pasted.page.reload();
      const words = await pasted.page.$eval('main', (at) => at.innerText.replace(/\s+/g, ' '));
      if (name === 'worksheet')
        for (const answer of answers.slice(1))
          for (const cut of (JSON.parse(answer) as Sheet['result']).cuts!) expect(words).toContain(cut.text);
      else if (name !== 'top') expect(words).toContain(`Buy ${buy!.text}`);
      if (name === 'cutting') expect(words).toMatch(/square 3 1\/2 in 48/);
      else for (const { text } of cuts) expect(words).toContain(text);
      expect(pasted.faults, form).toEqual([]);
      await pasted.page.close();
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  it('writes only what differs from what would stand there anyway', async () => {
    const { page, faults } = await maker('backing');
    const attributes = async (): Promise<string> => /<quilt-backing([^>]*)>/.exec(await snippetIn(page))![1]!;
    const sheet = '#live quilt-backing >>> ';
    expect(await attributes()).toBe(' width="61 3/4" length="70" overage="5"');
    await write(page, `${sheet}[data-row=overage]`, '4 in');
    await write(page, `${sheet}[data-row=fabricWidth]`, '40');
    expect(await attributes()).toBe(' width="61 3/4" length="70"');
    await page.$eval(`${sheet}[data-row=oneWay]`, (at) => (at as HTMLElement).click());
    await page.$eval('#locks [value=width]', (at) => (at as HTMLElement).click());
    expect(await attributes()).toBe(' width="61 3/4" length="70" one-way lock="width"');
    await tile(page, 'units', 'cm');
    expect(await attributes()).toBe(
      ' units="cm" width="61 3/4 in" length="70 in" overage="4 in" fabric-width="40 in" one-way lock="width"',
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  it('keeps sizes in the units they were written in', async () => {
    const { page, faults } = await openMaker();
    await tile(page, 'units', 'cm');
    await tile(page, 'calculator', 'cutting');
    const sheet = '#live quilt-cutting >>> select[data-row=sheet]';
    // The last choice is a size of one's own.
    const own = await page.$eval(sheet, (at) => [...at.options].at(-1)!.value);
    await (await page.$(sheet))!.select(own);
    await write(page, '#live quilt-cutting >>> input[data-row=sheet]', '45 x 50');
    await tile(page, 'units', 'in');
    await page.waitForFunction(() => document.querySelector<HTMLTextAreaElement>('#snippet')!.value);
    expect(await snippetIn(page)).toContain(' sheet="45 x 50 cm"');
    await tile(page, 'calculator', 'worksheet');
    await write(page, '[name="width.B"]', '42');
    await tile(page, 'units', 'cm');
    expect(await snippetIn(page)).toMatch(/letter="B" name="borders" fabric-width="42 in"/);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('starts with an invented address, and warns about it and about addresses of this computer', async () => {
    const { page, faults } = await openMaker();
    const warning = (): Promise<string | null> => page.$eval('#folder-warning', (at) => at.textContent);
    expect(await snippetIn(page)).toContain('src="https://example.org/quilt-reckoner/');
    expect(await warning()).toContain('invented');
    for (const folder of ['http://localhost:8080/dist/', `${files.address}/dist/`]) {
      await write(page, '[name=folder]', folder);
      expect(await warning()).toContain('Only this computer');
    }
    for (const folder of ['./', 'https://cloth.example/dist/']) {
      await write(page, '[name=folder]', folder);
      expect(await warning()).toBe('');
    }
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says beside a fabric what is wrong with it, and gives its width and colour to the snippet', async () => {
    const { page, faults } = await maker('worksheet');
    const noteAt = (id: string): Promise<string> =>
      page.evaluate((id) => document.getElementById(`${id}.note`)!.textContent, id);
    await write(page, '[name="price.A"]', 'abc');
    expect(await noteAt('fabric.A')).toMatch(/^“abc” is not a number\. Write it like/);
    expect(await page.$eval('#copy', (at) => (at as HTMLButtonElement).disabled)).toBe(true);
    await write(page, '[name="price.A"]', '12.50');
    expect(await noteAt('fabric.A')).toBe('');

    await write(page, '[name="letters.borders"]', 'Z');
    expect(await noteAt('part.borders')).toBe('No fabric has the letter Z: write A.');
    await write(page, '[name="letters.borders"]', 'D');
    expect(await noteAt('part.borders')).toContain('give it a name below');
    await write(page, '[name="fabric.D"]', 'rim');
    expect(await noteAt('part.borders')).toBe('');

    await write(page, '[name="swatch.D"]', 'sea');
    expect(await noteAt('fabric.D')).toContain('not a colour');
    await write(page, '[name="swatch.D"]', '#3f6f86');
    await write(page, '[name="width.D"]', '42 1/2');
    expect(await snippetIn(page)).toMatch(
      /<quilt-fabric letter="D" name="rim" fabric-width="42 1\/2" swatch="#3f6f86">/,
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says that it was opened from disk, in the place of the calculator', async () => {
    const { page } = await open(`file://${ROOT}demo/embed.html`);
    expect(await page.$eval('#live', (at) => (at as HTMLElement).innerText)).toContain('npm start');
    await page.close();
  });

  it('shows what a reader may not change, and leaves the author free to', async () => {
    const { page } = await maker('backing');
    const isCell = (): Promise<boolean> =>
      page.$eval('#live quilt-backing >>> [data-row=width]', (at) => at.localName === 'input');
    await page.$eval('#locks [value=width]', (at) => (at as HTMLElement).click());
    expect(await isCell()).toBe(true);
    await page.$eval('#as-reader', (at) => (at as HTMLElement).click());
    await page.waitForSelector('#live quilt-backing >>> span[data-row=width]');
    await page.$eval('#as-reader', (at) => (at as HTMLElement).click());
    await page.waitForSelector('#live quilt-backing >>> input[data-row=width]');
    await page.close();
  });

  it('copies by keyboard alone, and says so', async () => {
    const { page, faults } = await openMaker();
    await page.bringToFront();
    await page
      .browserContext()
      .overridePermissions(files.address, ['clipboard-read', 'clipboard-sanitized-write']);
    await page.focus('[name=calculator]:checked');
    await page.keyboard.press('ArrowDown');
    await page.waitForSelector('#live quilt-binding');
    await page.focus('#snippet');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.querySelector('#said')!.textContent);
    expect(await page.$eval('#said', (at) => at.textContent)).toMatch(/^Copied/);
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await snippetIn(page));
    expect(await snippetIn(page)).toContain('<quilt-binding width="58" length="70">');
    expect(faults).toEqual([]);
    await page.close();
  });

  describe('with settings that cannot be', () => {
    let visited: Visited;
    beforeAll(async () => (visited = await openMaker()));
    afterAll(() => visited.page.close());

    it.each([
      ['classic', 'folder', 'javascript:alert(1)//', /not the address of a folder/],
      ['loader', 'folder', 'data:text/javascript,alert(1)', /not the address of a folder/],
      ['classic', 'folder', '', /Where did you put the files.*\.\//],
      ['loader', 'folder', 'https://example.org/my files/', /no spaces/],
      ['frame', 'folder', '', /Where did you put the files/],
      ['frame', 'folder', './files/', /whole address/],
      ['frame', 'host', '', /Which page/],
      ['frame', 'host', 'javascript:alert(1)', /Which page/],
    ] as const)('%s: no snippet where the %s is “%s”', async (form, field, text, sentence) => {
      const { page, faults } = visited;
      await tile(page, 'how', form);
      await write(page, '[name=folder]', 'https://example.org/quilt-reckoner/');
      if (form === 'frame') await write(page, '[name=host]', 'https://example.org/');
      expect(await snippetIn(page)).toContain('quilt-');
      expect(await page.$eval('#note', (at) => at.textContent)).toBe('');
      await write(page, `[name=${field}]`, `${text} `);
      expect(await page.$eval('#note', (at) => at.textContent)).toMatch(sentence);
      expect(await snippetIn(page)).toBe('');
      expect(await page.$eval('#copy', (at) => (at as HTMLButtonElement).disabled)).toBe(true);
      expect(faults).toEqual([]);
    });
  });

  it('has no snippet while a calculator has an error, and has it again after that', async () => {
    const { page, faults } = await maker('backing');
    await write(page, '#live quilt-backing >>> [data-row=width]', 'wide');
    expect(await snippetIn(page)).toBe('');
    expect(await page.$eval('#note', (at) => at.textContent)).toMatch(
      /The snippet is not ready yet\. Backing: .*wide/,
    );
    await write(page, '#live quilt-backing >>> [data-row=width]', '60');
    expect(await snippetIn(page)).toContain('width="60');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('puts back what is typed over a reckoned row, which no snippet can hold', async () => {
    const { page, faults } = await maker('binding');
    const before = await snippetIn(page);
    await write(page, '#live quilt-binding >>> [data-row=around]', '300');
    expect(await page.$eval('#note', (at) => at.textContent)).toMatch(/put the value back/);
    expect(await snippetIn(page)).toBe(before);
    expect(await page.$eval('#live quilt-binding', (at) => at.measured)).toBeUndefined();
    expect(faults).toEqual([]);
    await page.close();
  });

  describe('what an author types', () => {
    const NASTY = `"><img src=x onerror="document.title='done for'">&amp; </script></noscript> 'Dock'`;
    let visited: Visited;
    let answers: string[];
    beforeAll(async () => {
      visited = await maker('worksheet');
      const { page } = visited;
      await write(page, '[name="fabric.A"]', NASTY);
      await page.$eval('[name="part.cutting"]', (at) => (at as HTMLElement).click());
      await page.$eval(
        '#live quilt-cutting >>> #list',
        (at, piece) => {
          const clipboardData = new DataTransfer();
          clipboardData.setData(
            'text/plain',
            `Fabric | Piece | Cut size | How many\nA | ${piece} | 3 1/2 | 12`,
          );
          at.dispatchEvent(
            new ClipboardEvent('paste', { clipboardData, bubbles: true, composed: true, cancelable: true }),
          );
        },
        NASTY.replaceAll('|', ''),
      );
      answers = await resultsIn(page);
    });
    afterAll(() => visited.page.close());

    it.each(FORMS)('%s: is words on the page, never markup', async (form) => {
      const snippet = await choose(visited.page, form);
      const pasted = await openWith(`<main>${snippet}</main>`);
      const own = form === 'frame' ? frameIn(pasted.page) : pasted.page;
      expect(await resultsIn(own)).toEqual(answers);
      expect(answers[0]).toContain('Dock');
      expect(await own.$$eval('img', (all) => all.length)).toBe(0);
      await pasted.page.setJavaScriptEnabled(false);
      await pasted.page.reload();
      expect(await pasted.page.$$eval('img', (all) => all.length)).toBe(0);
      expect(await pasted.page.$eval('main', (at) => at.innerText)).toContain(NASTY.replace(/\s+/g, ' '));
      expect(await pasted.page.title()).toBe('A page');
      expect(pasted.faults).toEqual([]);
      expect(visited.faults).toEqual([]);
      await pasted.page.close();
    });
  });

  it.each(NAMES)('%s fits 320 px, and axe finds nothing', async (name) => {
    const { page, faults } = await maker(name, { isPhone: true });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    expect(await findingsOn(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('a calculator in a frame', () => {
  const address = (settings: Record<string, string>): string =>
    `${files.address}/dist/frame.html?${new URLSearchParams(settings)}`;

  const frameOf = once(async (name: string) => {
    const { page } = await maker(name);
    const made = await choose(page, 'frame');
    await page.close();
    return made;
  });
  /** A page with the snippet of a backing, once the frame has told its height. */
  const embedded = async (): Promise<Visited> => {
    const pasted = await openWith(await frameOf('backing'));
    await resultsIn(frameIn(pasted.page));
    await fits(pasted.page);
    return pasted;
  };

  it('grows and shrinks with what is in it', async () => {
    const { page, faults } = await embedded();
    const heights = [await heightOf(page)];
    const fold = (open: boolean): Promise<void> =>
      frameIn(page).$eval(`quilt-backing >>> [aria-expanded=${open}]`, (at) => (at as HTMLElement).click());
    await fold(false);
    await page.waitForFunction(
      (before) => document.querySelector('iframe')!.clientHeight > before,
      {},
      heights[0]!,
    );
    await fits(page);
    heights.push(await heightOf(page));
    await fold(true);
    await page.waitForFunction(
      (before) => document.querySelector('iframe')!.clientHeight === before,
      {},
      heights[0],
    );
    await page.setViewport({ width: 360, height: 700 });
    await fits(page);
    expect(await heightOf(page)).toBeGreaterThan(heights[0]!);
    expect(heights[1]).toBeGreaterThan(heights[0]!);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is heard only as itself, and only with a height that can be', async () => {
    const { page, faults } = await embedded();
    const before = await heightOf(page);
    /** The height, after everything sent so far has arrived. */
    const settled = async (): Promise<number> => {
      await allArrived(page);
      return heightOf(page);
    };
    const told = { type: 'quilt-reckoner-height', height: 321 };

    for (const height of [1e9, 40_001, 0, -5, 1.5, Number.NaN, '400', '400;x', null, undefined, [400], {}])
      await frameIn(page).evaluate((data) => parent.postMessage(data, '*'), { ...told, height });
    for (const data of ['quilt-reckoner-height', null, 7, { ...told, type: 'another' }])
      await frameIn(page).evaluate((data) => parent.postMessage(data, '*'), data as object);
    await page.evaluate((data) => postMessage(data, '*'), told);
    // Another frame, of another site.
    await page.evaluate((url) => {
      const frame = document.createElement('iframe');
      frame.src = url;
      frame.id = 'other';
      document.body.append(frame);
      return new Promise((done) => (frame.onload = done));
    }, `${elsewhere.address}/dist/third-party-licenses.txt`);
    const other = page.frames().find((frame) => frame.url().startsWith(elsewhere.address))!;
    await other.evaluate((data) => parent.postMessage(data, '*'), told);
    // Another frame, of the calculator's own site.
    await page.$eval(
      '#other',
      (at, url) => {
        (at as HTMLIFrameElement).src = url;
        return new Promise((done) => ((at as HTMLIFrameElement).onload = done));
      },
      `${files.address}/dist/third-party-licenses.txt`,
    );
    const sister = page.frames().find((frame) => frame.url().endsWith('licenses.txt'))!;
    await sister.evaluate((data) => parent.postMessage(data, '*'), told);
    expect(await settled()).toBe(before);
    expect(await page.$eval('#other', (at) => at.clientHeight)).not.toBe(321);

    // And it is heard at all: the frame itself, with a height that can be.
    await frameIn(page).evaluate((data) => parent.postMessage(data, '*'), told);
    expect(await settled()).toBe(321);

    // The same frame, gone to another site.
    await page.$eval(
      'iframe',
      (at, url) => {
        at.contentWindow!.location.href = url;
        return new Promise((done) => (at.onload = done));
      },
      `${elsewhere.address}/dist/third-party-licenses.txt`,
    );
    const strayed = page.frames().find((frame) => frame.url().startsWith(elsewhere.address))!;
    await strayed.evaluate((data) => parent.postMessage({ ...data, height: 654 }, '*'), told);
    expect(await settled()).toBe(321);
    expect(faults).toEqual([]);
    await page.close();
  });

  it.each([
    ['the page’s own', (own: string) => own, 1],
    ['another', () => 'https://example.org', 0],
    ['every', () => '*', 0],
    ['no web', () => 'javascript:alert(1)', 0],
    ['no', () => '', 0],
  ])('tells its height to the site that its address names, here %s site', async (_, named, least) => {
    const { page } = await openWith('');
    const own = new URL(page.url()).origin;
    const src = address({ calculator: 'backing', width: '58', length: '70', host: named(own) });
    await page.evaluate((src) => {
      const heard: unknown[] = [];
      Object.assign(window, { heard });
      addEventListener('message', ({ data }) => heard.push(data));
      const frame = document.createElement('iframe');
      frame.src = src;
      document.body.append(frame);
    }, src);
    const frame = await page.waitForFrame((frame) => frame.url().startsWith(files.address));
    await resultsIn(frame);
    // Two frames are drawn after the height is known.
    await frame.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    await allArrived(page);
    const heard = await page.evaluate(() => (window as unknown as { heard: unknown[] }).heard);
    if (least) expect(heard.map((data) => Object.keys(data as object))).toContainEqual(['type', 'height']);
    else expect(heard.filter((data) => data !== 'arrived')).toEqual([]);
    await page.close();
  });

  it('takes from its address only attributes of its calculator, and only as text', async () => {
    const nasty = '"><img src=x onerror="parent.done=1"><script>parent.done=1</script>';
    const { page, faults } = await open(
      address({
        ...{ calculator: 'worksheet', top: '', 'top.block': nasty, 'top.across': '4', 'top.down': '5' },
        ...{ onclick: 'parent.done=1', style: 'position:fixed', id: 'taken', 'top.onfocus': 'parent.done=1' },
        ...{
          'fabric-A.name': nasty,
          'fabric-A.swatch': 'https://example.org/x.png',
          'fabric-E.name': 'none',
        },
        ...{
          'fabric-B.swatch': 'rgb(1 2 3)',
          innerHTML: nasty,
          lang: nasty,
          '__proto__.x': '1',
          script: nasty,
        },
      }),
    );
    await page.waitForSelector('quilt-top:defined');
    const found = await page.$$eval('main *', (all) =>
      all.map((at) => [at.localName, ...[...at.attributes].map(({ name }) => name)].join(' ')),
    );
    expect(found).toEqual([
      'quilt-worksheet',
      'quilt-fabric name letter',
      'quilt-fabric swatch letter',
      'quilt-top block across down',
    ]);
    expect(await page.$eval('quilt-top', (at) => at.block)).toBe(nasty);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('en');
    expect(await page.evaluate(() => 'done' in window)).toBe(false);
    expect(await page.$eval('quilt-top >>> [part=error]', (at) => at.textContent)).toMatch(/^\w.*\.$/);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('copies, hands over a file and prints under its own strict policy', async () => {
    const { page, faults } = await open('about:blank');
    await page.evaluateOnNewDocument(() => {
      const seen: string[] = [];
      Object.assign(window, { seen });
      window.print = () => {
        (parent as unknown as { seen: string[] }).seen.push(
          document.body.firstElementChild!.shadowRoot!.textContent,
        );
        dispatchEvent(new Event('afterprint'));
      };
      Object.assign(navigator.clipboard ?? {}, {
        writeText: (text: string) => Promise.resolve(seen.push(text)),
      });
    });
    const session = await page.createCDPSession();
    await session.send('Browser.setDownloadBehavior', { behavior: 'deny' });
    await page.goto(address({ calculator: 'backing', width: '58', length: '70' }));
    await resultsIn(page);
    for (const words of ['Copy or download', 'Copy table', 'Download CSV', 'Print'])
      await page.$eval(
        'quilt-backing',
        async (at, words) => {
          const buttons = [...at.shadowRoot!.querySelectorAll('button')];
          buttons.find(({ textContent }) => textContent.trim() === words)!.click();
          await at.updateComplete;
        },
        words,
      );
    await page.waitForFunction(() => (window as unknown as { seen: string[] }).seen.length === 2);
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    for (const text of seen) expect(text.replace(/\s+/g, ' ')).toContain('58 + 2 × 4 = 66 in');
    expect(faults).toEqual([]);
    await page.close();
  });

  it.each(['__proto__', 'constructor', 'img', '', 'fabric', '<script>'])(
    'shows a backing where the calculator in its address is “%s”',
    async (calculator) => {
      const { page, faults } = await open(address({ calculator, width: '58', length: '70' }));
      await page.waitForSelector('quilt-backing:defined');
      expect(await page.$$eval('main *', (all) => all.map(({ localName }) => localName))).toEqual([
        'quilt-backing',
      ]);
      expect(faults).toEqual([]);
      await page.close();
    },
  );

  it('survives a page around it that sends it anything', async () => {
    const { page, faults } = await embedded();
    const before = await resultsIn(frameIn(page));
    await frameIn(page).evaluate(() => {
      const last = new Promise((done) =>
        addEventListener('message', ({ data }) => data === 'last' && done(undefined)),
      );
      Object.assign(window, { last });
    });
    await page.evaluate(
      (told) => {
        for (const data of [told, { width: '1' }, 'x', null, { type: 'eval', code: 'alert(1)' }, 'last'])
          document.querySelector('iframe')!.contentWindow!.postMessage(data, '*');
      },
      { type: 'quilt-reckoner-height', height: 60 },
    );
    await frameIn(page).evaluate(() => (window as unknown as { last: Promise<unknown> }).last);
    expect(await resultsIn(frameIn(page))).toEqual(before);
    await fits(page);
    expect(faults).toEqual([]);
    await page.close();
  });
});
