import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { findingsOn } from './axe.js';
import { atRest, reveal, site, type Visit, writeIn } from './site.js';

const { open } = site();
const QUICK = pathToFileURL(`${ROOT}dist/quick.html`).href;
/** The parts that a quilt has at first. */
const TAGS = ['quilt-binding', 'quilt-backing', 'quilt-batting'];
const PHONE: Visit = { width: 360, height: 640 };

const folder = mkdtempSync(join(tmpdir(), 'quilt-files-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Alone {
  page: Page;
  faults: string[];
  requests: string[];
}

/** The page from disk, without a network. Every request is recorded. */
const alone = async (hash = '', visit: Visit = {}, isPhone = false): Promise<Alone> => {
  const { page, faults } = await open('about:blank', visit);
  const requests: string[] = [];
  page.on('console', (message) => message.type() === 'warn' && faults.push(message.text()));
  page.on('request', (request) => requests.push(request.url()));
  await page.setOfflineMode(true);
  if (isPhone) await page.setViewport({ ...page.viewport()!, isMobile: true, hasTouch: true });
  await page.goto(QUICK + hash, { waitUntil: 'load' });
  await atRest(page);
  return { page, faults, requests };
};
/** The same on a phone, whose pointer is a finger. */
const onPhone = (visit: Visit = PHONE): Promise<Alone> => alone('', visit, true);

const textOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (at) => at.textContent.replaceAll('\u00a0', ' ').trim());
/** What is to buy, in short. */
const summary = (page: Page): Promise<string> => textOf(page, '.lines');
/** What the page says of the size. */
const flow = (page: Page): Promise<string> => textOf(page, '.flow');
const link = (page: Page): string => new URL(page.url()).hash;

/** The size that every part that is on the page reckons with. */
const sizes = (page: Page): Promise<string[]> =>
  page.$$eval(TAGS.join(), (all) =>
    all.map(({ shadowRoot }) =>
      ['width', 'length']
        .map((id) =>
          shadowRoot!.querySelector(`[data-row=${id}]`)?.textContent.replaceAll('\u00a0', ' ').trim(),
        )
        .join(' × '),
    ),
  );
/**
 * Every part is reckoned for a quilt of this size. Geometry: the binding goes round it, and the back and the batting lie under it
 * with 4 in more on each side; 10 in of binding for corners and tails is common practice, no source.
 */
const expectFor = async (page: Page, width: number, length: number): Promise<void> => {
  expect(await sizes(page)).toEqual(TAGS.map(() => `${width} in × ${length} in`));
  const rows = (tag: string, ids: string[]): Promise<(string | undefined)[]> =>
    page.$eval(
      tag,
      (at, ids) => {
        const { working } = (at as HTMLElementTagNameMap['quilt-backing']).result;
        return ids.map((id) => working.find((row) => row.id === id)?.inches);
      },
      ids,
    );
  for (const tag of ['quilt-backing', 'quilt-batting'])
    expect(await rows(tag, ['needWidth', 'needLength'])).toEqual([`${width + 8}`, `${length + 8}`]);
  expect(await page.$eval('quilt-binding', ({ answer }) => Number(answer!.length))).toBe(
    2 * (width + length) + 10,
  );
};
const answers = (page: Page): Promise<string[]> =>
  page.$$eval(TAGS.join(), (all) =>
    all.map((at) => (at as HTMLElementTagNameMap['quilt-backing']).result.buy?.text ?? ''),
  );
/** Everything that the page and its parts come to. */
const everything = async (page: Page): Promise<unknown> => {
  await atRest(page);
  return page.evaluate(() => {
    const parts = [...document.querySelectorAll('*')].filter((at) => at.shadowRoot && 'result' in at);
    return [
      ...parts.map(
        (at) => `${at.localName} ${JSON.stringify((at as unknown as { result: unknown }).result)}`,
      ),
      ...[...document.querySelectorAll('.lines, .flow, .said')].map((at) => at.textContent),
      ...[...document.querySelectorAll<HTMLInputElement>('input:not([type=file]), select')].map(
        (at) => `${at.name}: ${at.type === 'checkbox' || at.type === 'radio' ? at.checked : at.value}`,
      ),
    ];
  });
};

/** Opens the part that the selector is in, and everything that is folded away in it. */
const unfold = async (page: Page, selector: string): Promise<void> => {
  await page.$eval(selector, (at) => {
    const root = at.getRootNode();
    const place = (root instanceof ShadowRoot ? root.host : at).closest('details');
    if (place) place.open = true;
  });
  await reveal(page, selector);
};
const write = async (page: Page, selector: string, text: string): Promise<void> => {
  await unfold(page, selector);
  await writeIn(page, selector, text, 'Tab');
  await atRest(page);
};
const tick = async (page: Page, selector: string): Promise<void> => {
  await unfold(page, selector);
  await page.$eval(selector, (at) => (at as HTMLElement).click());
  await atRest(page);
};
const choose = async (page: Page, selector: string, value: string): Promise<void> => {
  await unfold(page, selector);
  await page.select(selector, value);
  await atRest(page);
};
const answerBy = (page: Page, way: string): Promise<void> => tick(page, `[name=size][value=${way}]`);

describe('quick.html, from disk and without a network', () => {
  it('has an answer at once, and asks for nothing', async () => {
    const { page, faults, requests } = await alone();
    for (const answer of await answers(page)) expect(answer).toMatch(/^\d/);
    expect(await summary(page)).toMatch(/^Binding \d.*Backing \d.*Batting \w+ \d/);
    await write(page, 'input[name=width]', '60');
    expect(requests.filter((url) => !url.startsWith('data:'))).toEqual([QUICK]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('never shows another answer first, or another size, where a link names one', async () => {
    const { page } = await open('about:blank', {
      before: `window.seen = [];
        const look = () => {
          const texts = ['.lines', '[name=width]'].map((at) => document.querySelector(at)).map((at) => at?.value ?? at?.textContent);
          if (texts.some(Boolean)) seen.push(texts.join(' | '));
          requestAnimationFrame(look);
        };
        look();`,
    });
    await page.goto(`${QUICK}#width=90&length=100`, { waitUntil: 'load' });
    await page.waitForFunction('seen.length > 2');
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    expect([...new Set(seen)]).toEqual([expect.stringMatching(/Backing .* \| 90$/)]);
    await page.close();
  });
});

describe('the question', () => {
  it('is answered by the finished size', async () => {
    const { page, faults } = await alone();
    await write(page, 'input[name=width]', '80');
    await write(page, 'input[name=length]', '90');
    await expectFor(page, 80, 90);
    expect(await page.$('quilt-borders')).toBeNull();
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is answered by the top, which borders then go round', async () => {
    const { page, faults } = await alone();
    await answerBy(page, 'top');
    // geometry: 58 + 2 × (2 + 4 1/2) by 70 + 13
    await expectFor(page, 71, 83);
    expect(await flow(page)).toContain('71 × 83 in');
    await write(page, 'quilt-borders >>> [data-row=borders]', '3');
    // geometry: 58 + 2 × (3 + 4 1/2) by 70 + 15
    await expectFor(page, 73, 85);
    await answerBy(page, 'finished');
    await expectFor(page, 58, 70);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is answered by a bed, with its drop and its tuck', async () => {
    const { page, faults } = await alone();
    await answerBy(page, 'bed');
    // Mattress 60 × 80 (“Mattresses”, sizes.com); geometry: 60 + 2 × 12 by 80 + 12
    await expectFor(page, 84, 92);
    await write(page, 'input[name=drop]', '10');
    await write(page, 'input[name=tuck]', '6');
    // geometry: 60 + 2 × 10 by 80 + 10 + 6
    await expectFor(page, 80, 96);
    await choose(page, 'select[name=bed]', 'twin');
    // Mattress 39 × 75, the same source; geometry: 39 + 2 × 10 by 75 + 16
    await expectFor(page, 59, 91);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is answered by blocks, here or in the top', async () => {
    const { page, faults } = await alone();
    await answerBy(page, 'blocks');
    await write(page, 'input[name=block]', '14');
    // geometry: 5 × 14 by 6 × 14
    await expectFor(page, 70, 84);
    expect(await summary(page)).toMatch(/no cloth for the blocks yet$/);
    await write(page, 'quilt-top >>> [data-row=across]', '6');
    expect(await page.$eval('[name=across]', (at) => (at as HTMLInputElement).value)).toBe('6');
    await write(page, 'quilt-top >>> [data-row=sashing]', '2');
    // geometry: 6 × 14 + 5 × 2 by 6 × 14 + 5 × 2
    await expectFor(page, 94, 94);
    await tick(page, 'input[name=borders]');
    // geometry: 94 + 13
    await expectFor(page, 107, 107);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('takes both sides in one cell', async () => {
    const { page, faults } = await alone();
    await write(page, 'input[name=width]', '60 x 72 1/2');
    expect(
      await page.$$eval('[name=width], [name=length]', (all) =>
        all.map((at) => (at as HTMLInputElement).value),
      ),
    ).toEqual(['60', '72 1/2']);
    expect(await sizes(page)).toEqual(TAGS.map(() => '60 in × 72 1/2 in'));
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says beside the cell what is wrong with it, and gives no amount meanwhile', async () => {
    const { page, faults } = await alone();
    await write(page, 'input[name=length]', 'abc');
    expect(await flow(page)).toContain('“abc” is not a length');
    expect(await summary(page)).toBe('No answer until the length can be read.');
    const invalid = (): Promise<string[]> =>
      page.$$eval('form [aria-invalid=true]', (all) => all.map((at) => (at as HTMLInputElement).name));
    expect(await invalid()).toEqual(['length']);
    await write(page, 'input[name=length]', '70');
    expect(await invalid()).toEqual([]);
    expect(await summary(page)).toMatch(/^Binding \d/);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('waits while a fraction is being typed', async () => {
    const { page } = await alone();
    await page.$eval('[name=width]', (at) => (at as HTMLInputElement).select());
    await page.keyboard.type('61 1/');
    await atRest(page);
    expect(await summary(page)).toBe('Still typing…');
    expect(await page.$('form [aria-invalid=true]')).toBeNull();
    await page.keyboard.type('2');
    await atRest(page);
    expect(await sizes(page)).toEqual(TAGS.map(() => '61 1/2 in × 70 in'));
    await page.close();
  });
});

describe('borders', () => {
  it('lie inside a finished size, which stays what it is', async () => {
    const { page, faults } = await alone();
    await tick(page, 'input[name=borders]');
    expect(await sizes(page)).toEqual(TAGS.map(() => '58 in × 70 in'));
    // geometry: 58 − 2 × (2 + 4 1/2) by 70 − 13
    expect(await flow(page)).toContain('Inside the borders the top is 45 × 57 in');
    await tick(page, '[name=round-top]');
    expect(await sizes(page)).toEqual(TAGS.map(() => '71 in × 83 in'));
    expect(faults).toEqual([]);
    await page.close();
  });

  it('that somebody measured make the quilt larger', async () => {
    const { page, faults } = await alone();
    await tick(page, 'input[name=borders]');
    const before = await sizes(page);
    await write(page, 'quilt-borders >>> [data-row=border1Sides]', '73');
    const after = await page.$eval(
      'quilt-borders',
      ({ result }) => (result as { finished: { width: string; length: string } }).finished,
    );
    expect(await sizes(page)).not.toEqual(before);
    expect(await sizes(page)).toEqual(TAGS.map(() => `${after.width} in × ${after.length} in`));
    expect(await flow(page)).toContain('As you measured, the quilt is');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('that take up the whole quilt are too wide', async () => {
    const { page } = await alone('#borders=yes&borders.borders=30');
    expect(await summary(page)).toContain('leave no room for a top');
    expect(await answers(page)).toEqual(['', '', '']);
    await page.close();
  });

  it.each(['top', 'finished', 'bed', 'blocks'])(
    'give no size while they are wrong, so that nothing is too small (%s)',
    async (way) => {
      const { page, faults } = await alone(`#size=${way}&borders=yes`);
      const before = await answers(page);
      expect(before).not.toContain('');
      await write(page, 'quilt-borders >>> [data-row=borders2]', '4 1/');
      expect(await answers(page)).toEqual(['', '', '']);
      expect(await summary(page)).toMatch(/^Look into “Borders”.*waits for the size with borders\.$/);
      expect(await page.$('form [aria-invalid=true]')).toBeNull();
      const wrong = link(page);
      await write(page, 'quilt-borders >>> [data-row=borders2]', '4 1/2');
      expect(await answers(page)).toEqual(before);
      const fresh = await alone(wrong);
      expect(await answers(fresh.page)).toEqual(['', '', '']);
      expect([...faults, ...fresh.faults]).toEqual([]);
      await page.close();
      await fresh.page.close();
    },
  );
});

describe('the parts', () => {
  it('are on the list or not, as somebody wishes', async () => {
    const { page, faults } = await alone();
    await tick(page, 'input[name=batting]');
    expect(await summary(page)).toMatch(/^Binding [^·]* · Backing [^·]*$/);
    await tick(page, 'input[name=chart]');
    await page.$eval('quilt-block', (at) => {
      at.chart = 'A | A/B\nB/A | B';
    });
    await tick(page, 'input[name=sleeve]');
    expect(await summary(page)).toContain('Hanging sleeve');
    await tick(page, 'input[name=cutting]');
    expect(await summary(page)).toContain('Look into “What to cut”');
    await page.$eval('quilt-cutting', (at) => {
      at.list = 'A | square | 3 1/2 | 12';
    });
    await atRest(page);
    expect(await summary(page)).toMatch(/Cutting plan \d/);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('that are cut from one fabric are bought together, at its price', async () => {
    const { page, faults } = await alone('#increment=10+cm');
    await tick(page, '#fabrics [name=add]');
    await write(page, '[data-letter=A] [name=name]', 'Sand');
    await write(page, '[data-letter=A] [name=price]', '10');
    await choose(page, '.uses label:nth-of-type(1) select', 'A');
    await choose(page, '.uses label:nth-of-type(2) select', 'A');
    const { fabrics, items } = await page.$eval(
      'quilt-worksheet',
      ({ result }) =>
        result as {
          fabrics: { letter: string; parts: unknown[]; cost?: { amount: string }; buy: { amount: string } }[];
          items: unknown[];
        },
    );
    expect(fabrics.map(({ letter, parts }) => `${letter} ${parts.length}`)).toEqual(['A 2']);
    expect(items).toHaveLength(1);
    // 10 for each metre
    expect(Number(fabrics[0]!.cost!.amount)).toBeCloseTo(10 * Number(fabrics[0]!.buy.amount));
    await tick(page, '[data-letter=A] button');
    expect(await page.$eval('quilt-backing', (at) => at.fabric)).toBeFalsy();
    expect(faults).toEqual([]);
    await page.close();
  });

  it('open as a link from before says: a bed for the batting alone', async () => {
    const { page, faults } = await alone(
      '#width=58&length=70&size=finished&fabric-width=40+in&units=in&batting.bed=queen',
    );
    // Mattress 60 × 80 (“Mattresses”, sizes.com) with a drop of 12 in: 84 × 92
    expect(await flow(page)).toContain('The batting is for the bed, a quilt of 84 × 92 in');
    expect((await sizes(page)).slice(0, 2)).toEqual(['58 in × 70 in', '58 in × 70 in']);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('draw the quilt to scale', async () => {
    const { page } = await alone('#size=top');
    expect(await page.$eval('.picture >>> svg', (at) => at.textContent.replaceAll('\u00a0', ' '))).toContain(
      '71 in',
    );
    await write(page, '[name=width]', 'x');
    expect(await page.$('.picture >>> svg')).toBeNull();
    await page.close();
  });
});

describe('a block', () => {
  const BLOCKS = '#size=blocks&block=9&across=4&down=5&chart=yes';

  it('has as many as the top has places, and the picture shows them all', async () => {
    const { page, faults } = await alone(BLOCKS);
    expect(await page.$eval('quilt-block', ({ result }) => (result as { count?: number }).count)).toBe(20);
    await page.$eval('#picture', (at) => ((at as HTMLDetailsElement).open = true));
    // A nine-patch has nine patches.
    const patches = await page.$$eval('.picture >>> path', (all) =>
      all.reduce((sum, path) => sum + (path.getAttribute('d')!.match(/Z/gi) ?? []).length, 0),
    );
    expect(patches).toBeGreaterThanOrEqual(20 * 9);
    await write(page, 'input[name=down]', '6');
    expect(await page.$eval('quilt-block', ({ result }) => (result as { count?: number }).count)).toBe(24);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is cut from the fat quarters that somebody has, and the list says whether they are enough', async () => {
    const { page, faults } = await alone(BLOCKS);
    await tick(page, '#fabrics [name=add]');
    await choose(page, '[data-letter=A] [name=sheet]', 'fat-quarter');
    const ofA = async (): Promise<string> => {
      await atRest(page);
      return page.$eval(
        'quilt-worksheet',
        ({ result }) =>
          (result as { items: { fabric: string; text: string }[] }).items.find(
            ({ fabric }) => fabric === 'A',
          )!.text,
      );
    };
    // Geometry: a square that finishes at 3 in is cut 3 1/2; 5 × 5 of them fit 20 × 18 in, and 20 blocks have 100 of A.
    expect(await ofA()).toBe('4 fat quarters');
    await write(page, '[data-letter=A] [name=hand]', '3 fat quarters');
    expect(await ofA()).toBe('1 fat quarter more');
    await write(page, '[data-letter=A] [name=hand]', '9 fat quarters');
    expect(await ofA()).toBe('You have enough');
    const fresh = await alone(link(page));
    expect(
      await fresh.page.$eval('[data-letter=A] [name=hand]', (at) => (at as HTMLInputElement).value),
    ).toBe('9 fat quarters');
    expect([...faults, ...fresh.faults]).toEqual([]);
    await page.close();
    await fresh.page.close();
  });
});

describe('units', () => {
  it('keep a shop’s packages as they were written', async () => {
    const { page, faults } = await alone(
      '#units=cm&width=150&length=180&batting.packages=klein 170 x 200;gross 250 x 260',
    );
    // 150 + 2 × 10 = 170 cm: the small one is just wide enough, but not with the 4 in that inches have, 170.32 cm.
    const bought = (): Promise<string | undefined> =>
      page.$eval('quilt-batting', ({ result }) => result.buy?.text);
    expect(await bought()).toBe('1 klein package, 170 × 200 cm');
    await choose(page, 'select[name=units]', 'in');
    expect(await bought()).toMatch(/^1 gross package, /);
    await choose(page, 'select[name=units]', 'cm');
    expect(await bought()).toBe('1 klein package, 170 × 200 cm');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('keep a measure while something else is wrong', async () => {
    const { page, faults } = await alone('#size=top');
    await write(page, 'quilt-borders >>> [data-row=border1Sides]', '73');
    await write(page, 'quilt-borders >>> [data-row=borders]', 'wide');
    await choose(page, 'select[name=units]', 'cm');
    expect(await page.$eval('quilt-borders', ({ measured }) => measured)).toEqual({ border1Sides: '73 in' });
    expect(faults).toEqual([]);
    await page.close();
  });

  it('show the same quilt in centimetres when asked, and in inches again', async () => {
    const { page, faults } = await alone('#size=top');
    await write(page, 'input[name=length]', '72');
    await write(page, 'quilt-backing >>> [data-row=overage]', '3');
    await write(page, 'quilt-borders >>> [data-row=border1Sides]', '73');
    /** The exact inches of every row that comes from what was written: the defaults are round in each unit. */
    const lengths = (): Promise<string[]> =>
      page.$$eval('quilt-borders', (all) =>
        all.flatMap((at) =>
          at.result.working
            .filter(({ id }) => /^(width|length|border1Sides)$/.test(id))
            .map(({ id, inches, value }) => `${id} ${inches ?? value.replace(/ in/g, '')}`),
        ),
      );
    const before = await lengths();
    await choose(page, 'select[name=units]', 'cm');
    // 58 × 2.54
    expect(await page.$eval('[name=width]', (at) => (at as HTMLInputElement).value)).toBe('147.32 cm');
    for (const answer of await answers(page)) expect(answer).not.toMatch(/\d in\b/);
    expect(await lengths()).toEqual(before);
    // What nobody changed is as usual where people measure in centimetres.
    expect(await page.$eval('[name=fabric-width]', (at) => (at as HTMLInputElement).value)).toBe('105 cm');
    await choose(page, 'select[name=units]', 'in');
    expect(await page.$eval('[name=width]', (at) => (at as HTMLInputElement).value)).toBe('58');
    expect(await lengths()).toEqual(before);
    expect(faults).toEqual([]);
    await page.close();
  });
});

/** Changes everything that can be: the question, every part, its fabrics and what goes on the list. */
const changeAll = async (page: Page): Promise<void> => {
  await answerBy(page, 'blocks');
  for (const [name, text] of Object.entries({ block: '9 1/2', across: '6', down: '7', 'fabric-width': '42' }))
    await write(page, `input[name=${name}]`, text);
  await choose(page, 'select[name=increment]', '1/4 yd');
  await tick(page, 'quilt-top >>> [data-row=cornerstones]').catch(() => undefined);
  await write(page, 'quilt-top >>> [data-row=sashing]', '1 1/2');
  await tick(page, 'input[name=borders]');
  await write(page, 'quilt-borders >>> [data-row=borders]', '1 1/2');
  await write(page, 'quilt-borders >>> [data-row=borders2]', '5 & more = 1');
  await write(page, 'quilt-borders >>> [data-row=borders2]', '5');
  await choose(page, 'quilt-borders >>> [data-row=corners]', 'squares');
  await write(page, 'quilt-borders >>> [data-row=border1Sides]', '80 1/4');
  await tick(page, 'quilt-backing >>> [data-row=oneWay]');
  await write(page, 'quilt-backing >>> [data-row=price]', '12.50');
  await write(page, 'quilt-binding >>> [data-row=finished]', '3/8');
  await write(page, 'quilt-batting >>> [data-row=overage]', '3');
  await tick(page, 'input[name=cutting]');
  await page.$eval('quilt-cutting', (at) => {
    at.list = 'A | square | 3 1/2 | 12\nB | strip; “odd” & <b> | 2 x 8 | 4';
  });
  await tick(page, 'input[name=sleeve]');
  await tick(page, '#fabrics [name=add]');
  await tick(page, '#fabrics [name=add]');
  await write(page, '[data-letter=A] [name=name]', 'Sand & “Sea” <i>');
  await write(page, '[data-letter=A] [name=price]', '9.80');
  await choose(page, '[data-letter=A] [name=sheet]', 'fat-eighth');
  await write(page, '[data-letter=A] [name=hand]', '2 fat eighths & “more”');
  await page.$eval('[data-letter=B] [type=color]', (at) => {
    (at as HTMLInputElement).value = '#123456';
    at.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await choose(page, '.uses label:nth-of-type(1) select', 'B');
  await choose(page, 'select[name=units]', 'cm');
  await atRest(page);
};

describe('a quilt is kept', () => {
  describe('once all of it was changed', () => {
    let visited: Alone;
    let start: unknown;
    let changed: unknown;
    beforeAll(async () => {
      visited = await alone();
      start = await everything(visited.page);
      await changeAll(visited.page);
      changed = await everything(visited.page);
    });
    afterAll(() => visited.page.close());

    it('in a file, which opens in a fresh page', async () => {
      const { page, faults } = visited;
      await page.evaluate(() => {
        // What would be saved is read here: a page from disk may not download without a window.
        HTMLAnchorElement.prototype.click = () => undefined;
        URL.createObjectURL = (blob) => {
          void (blob as Blob).text().then((text) => Object.assign(window, { saved: text }));
          return '';
        };
      });
      await tick(page, '[name=save]');
      await page.waitForFunction('window.saved');
      const path = join(folder, 'quilt.json');
      writeFileSync(path, await page.evaluate(() => (window as unknown as { saved: string }).saved));
      const fresh = await alone();
      const input = await fresh.page.$('input[name=open]');
      await (input as unknown as { uploadFile(path: string): Promise<void> }).uploadFile(path);
      await fresh.page.waitForFunction(() => document.querySelector('.filed')!.textContent);
      expect(await textOf(fresh.page, '.filed')).toBe('This is the quilt of quilt.json.');
      expect(await everything(fresh.page)).toEqual(changed);
      expect(link(fresh.page)).toBe(link(page));
      expect([...faults, ...fresh.faults]).toEqual([]);
      await fresh.page.close();
    });

    it('in the address: a reload, and the link in a fresh page, show the same', async () => {
      const { page, faults } = visited;
      expect(changed).not.toEqual(start);
      const kept = link(page);
      const fresh = await alone(kept);
      expect(await everything(fresh.page)).toEqual(changed);
      expect(await fresh.page.$eval('quilt-backing', (at) => at.oneWay)).toBe(true);
      await page.reload({ waitUntil: 'load' });
      expect(await everything(page)).toEqual(changed);
      expect(link(page)).toBe(kept);
      expect([...faults, ...fresh.faults]).toEqual([]);
      await fresh.page.close();
    });
  });

  it.each([
    ['no JSON', 'a quilt, 60 x 72'],
    ['nothing', ''],
    ['another file’s JSON', '{"quilt": {"width": "60"}}'],
    ['a list', '{"quilt-reckoner": 1, "quilt": ["width"]}'],
    ['numbers', '{"quilt-reckoner": 1, "quilt": {"width": 60}}'],
    ['null', '{"quilt-reckoner": 1, "quilt": null}'],
    ['two million letters', JSON.stringify({ 'quilt-reckoner': 1, quilt: { width: 'x'.repeat(2e6) } })],
  ])('but not in a file with %s: the page says so, and nothing changes', async (_, content) => {
    const { page, faults } = await alone('#width=61');
    const before = await everything(page);
    const path = join(folder, 'broken.json');
    writeFileSync(path, content);
    const input = await page.$('input[name=open]');
    await (input as unknown as { uploadFile(path: string): Promise<void> }).uploadFile(path);
    await page.waitForFunction(() => document.querySelector('.filed')!.textContent);
    expect(await textOf(page, '.filed')).toContain('broken.json is not a quilt that this page saved');
    expect(await everything(page)).toEqual(before);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('with no more in its link than differs from the start', async () => {
    const { page } = await alone();
    await write(page, 'input[name=width]', '60');
    expect(link(page)).toBe('#width=60');
    await write(page, 'input[name=width]', '58');
    expect(link(page)).toBe('');
    for (const ticked of [true, false]) {
      await tick(page, 'quilt-backing >>> [data-row=oneWay]');
      expect(await page.$eval('quilt-backing', (at) => at.oneWay)).toBe(ticked);
      expect(link(page)).toBe(ticked ? '#backing.one-way=true' : '');
    }
    // Borders that were changed, and then taken away, stay away.
    await tick(page, 'input[name=borders]');
    await write(page, 'quilt-borders >>> [data-row=borders]', '3');
    await tick(page, 'input[name=borders]');
    const fresh = await alone(link(page));
    expect(await sizes(fresh.page)).toEqual(TAGS.map(() => '58 in × 70 in'));
    expect(await fresh.page.$('quilt-borders')).toBeNull();
    await page.close();
    await fresh.page.close();
  });

  it('in a link of the page as it was before', async () => {
    const { page, faults } = await alone(
      '#width=60&length=72&size=top&fabric-width=42&units=in&backing.overage=5&borders.borders=3&borders.corners=mitred&borders.measured.border1TopWidth=61',
    );
    // geometry: the top as measured, 61 less a seam of 1/4 at both sides, + 2 × 3 by 72 + 6; the backing 5 more on each side
    expect(await sizes(page)).toEqual(TAGS.map(() => '66 1/2 in × 78 in'));
    const row = (id: string): Promise<string | undefined> =>
      page.$eval(
        'quilt-backing',
        ({ result }, id) => result.working.find((row) => row.id === id)?.inches,
        id,
      );
    expect([await row('needWidth'), await row('needLength'), await row('fabricWidth')]).toEqual([
      '76 1/2',
      '88',
      '42',
    ]);
    expect(await page.$eval('quilt-borders', (at) => at.corners)).toBe('mitred');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('and a link that is opened in the same page is followed', async () => {
    const { page, faults } = await alone('#width=40&length=50');
    expect((await sizes(page))[0]).toBe('40 in × 50 in');
    await page.evaluate(() => void (location.hash = '#width=44&length=55&borders.borders=3'));
    await page.waitForFunction(() => document.querySelector('quilt-borders'));
    await atRest(page);
    expect(await sizes(page)).toEqual(TAGS.map(() => '44 in × 55 in'));
    expect(await page.$eval('quilt-borders', (at) => at.borders)).toBe('3');
    expect(faults).toEqual([]);
    await page.close();
  });

  it.each([
    ['an empty width', '#width='],
    [
      'markup, and choices that are none',
      '#width=%3Cimg%20src%3Dx%20onerror%3D%22hit%3D1%22%3E&units=furlong&size=x&bed=<script>hit=1</script>',
    ],
    ['a bed that is none', '#size=bed&bed=constructor&drop=%3Cscript%3Ehit%3D1%3C/script%3E'],
    [
      'fabrics that are none',
      '#fabric.A.swatch=url(//example.org)&fabric.A.name=<script>hit=1</script>&fabric.__proto__.name=x&binding.fabric=Q+R',
    ],
    [
      'keys that are none',
      '#backing.measured=nonsense&borders.corners=constructor&nothing.at=all&__proto__=x',
    ],
    ['bytes that are no text', '#width=%E0%A4%A&=&&%'],
    ['10,000 digits', `#width=${'9'.repeat(10_000)}`],
    ['a cut list of 100,000 letters', `#cutting=yes&cutting.list=${'square%20'.repeat(12_000)}`],
  ])('survives a link that is wrong: %s', async (_, hash) => {
    const { page, faults, requests } = await alone(hash);
    expect(
      await page.$$eval(TAGS.join(), (all) =>
        all.map(({ shadowRoot }) => !!shadowRoot!.querySelector('[part=table]')),
      ),
    ).toEqual(TAGS.map(() => true));
    expect(JSON.stringify(await everything(page))).not.toMatch(/\b(NaN|undefined|Infinity)\b/);
    expect(await page.evaluate(() => 'hit' in window)).toBe(false);
    expect(requests.filter((url) => !url.startsWith('file:') && !url.startsWith('data:'))).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe('on a phone', () => {
  it('shows the question and what to buy on its first screen, and is no longer than three', async () => {
    const { page } = await onPhone();
    const box = await (await page.$('.summary'))!.boundingBox();
    expect(box!.y).toBeGreaterThan(0);
    expect(box!.y + box!.height).toBeLessThanOrEqual(640);
    expect(await page.$$eval('details[open]', (all) => all.length)).toBe(0);
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    process.stdout.write(
      `quick.html at 360 px: ${height} px, the summary ends at ${box!.y + box!.height} px\n`,
    );
    expect(height).toBeLessThanOrEqual(3 * 640);
    await page.close();
  });

  it('keeps what to buy in sight, and does not cover the cell that has the focus', async () => {
    const { page } = await onPhone();
    await unfold(page, 'quilt-backing >>> [data-row=overage]');
    for (const [row, from] of [
      ['overage', 'bottom'],
      ['price', 'top'],
      ['overage', 'bottom'],
    ] as const) {
      await page.evaluate((from) => scrollTo(0, from === 'top' ? 0 : document.body.scrollHeight), from);
      await page.$eval(`quilt-backing >>> [data-row=${row}]`, (at) => {
        (document.activeElement as HTMLElement).blur();
        (at as HTMLElement).focus();
      });
      const [bar, cell] = [
        await (await page.$('.summary'))!.boundingBox(),
        await (await page.$(`quilt-backing >>> [data-row=${row}]`))!.boundingBox(),
      ];
      const scrolled = await page.evaluate(() => scrollY);
      expect(scrolled).toBeGreaterThan(100);
      // at the edge of the screen
      expect(bar!.y).toBeCloseTo(0, 0);
      expect(cell!.y).toBeGreaterThanOrEqual(bar!.height);
      expect(cell!.y + cell!.height).toBeLessThanOrEqual(640);
    }
    await page.close();
  });

  it('leads to the shopping list without a change of the quilt', async () => {
    const { page } = await onPhone();
    await page.click('.summary a');
    await page.waitForFunction(() => document.activeElement?.id === 'list');
    const top = await page.$eval('#list', (at) => at.getBoundingClientRect().top);
    expect(top).toBeGreaterThanOrEqual(
      await page.$eval('.summary', (at) => at.getBoundingClientRect().bottom),
    );
    expect(top).toBeLessThan(640);
    expect(link(page)).toBe('');
    await page.close();
  });

  it.each([280, 320, 360])(
    'fits %d px: nothing sideways, targets of 44 px, cells of 16 px',
    async (width) => {
      const { page } = await onPhone({ width, height: 640 });
      await page.$$eval('details', (all) => all.forEach((at) => (at.open = true)));
      for (const name of ['borders', 'cutting', 'sleeve']) await tick(page, `input[name=${name}]`);
      await tick(page, '#fabrics [name=add]');
      await atRest(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const small = await page.$$eval(
        'input:not(.unseen), select, button, summary, .button, .summary a',
        (all) =>
          all.flatMap((at) => {
            const { height, width } = (
              at.matches('[type=radio], [type=checkbox]') ? at.closest('label')! : at
            ).getBoundingClientRect();
            const isText = at.matches('input:not([type=radio], [type=checkbox], [type=color]), select');
            const isSmall = height > 0 && (height < 43.9 || width < 43.9);
            return isSmall || (isText && parseFloat(getComputedStyle(at).fontSize) < 16)
              ? [at.outerHTML.slice(0, 80)]
              : [];
          }),
      );
      expect(small).toEqual([]);
      await page.close();
    },
  );

  it('has the keys that suit a cell, and keys for fractions', async () => {
    const { page } = await onPhone();
    const modes = await page.$$eval('form input:not([type=radio])', (all) =>
      all.map((at) => `${at.name} ${at.inputMode}`),
    );
    expect(modes).toEqual([
      'width decimal',
      'length decimal',
      'drop decimal',
      'tuck decimal',
      'block decimal',
      'across numeric',
      'down numeric',
      'fabric-width decimal',
    ]);
    await page.tap('[name=width]');
    await page.keyboard.press('End');
    await page.tap('.keys button:nth-child(4)');
    await atRest(page);
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('width');
    expect((await sizes(page))[0]).toBe('58 1/2 in × 70 in');
    await page.close();
  });
});

describe('everybody can use it', () => {
  it('by the keyboard alone', async () => {
    const { page, faults } = await alone();
    const at = (): Promise<string> =>
      page.evaluate(() => {
        const { activeElement } = document;
        return (
          (activeElement as HTMLInputElement).name ||
          activeElement!.closest('[id]')?.id ||
          activeElement!.localName
        );
      });
    const tabTo = async (name: string): Promise<void> => {
      for (let presses = 0; presses < 40 && (await at()) !== name; presses += 1)
        await page.keyboard.press('Tab');
      expect(await at()).toBe(name);
    };
    await tabTo('size');
    await page.keyboard.press('ArrowRight');
    await tabTo('width');
    await page.keyboard.type('60');
    await tabTo('borders');
    await page.keyboard.press('Enter');
    expect(await page.$eval('#borders', (at) => (at as HTMLDetailsElement).open)).toBe(true);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await atRest(page);
    // The borders that a top has at first were just taken away.
    expect(await sizes(page)).toEqual(TAGS.map(() => '60 in × 70 in'));
    await tabTo('save');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('tells once what there is to buy, when a cell is left', async () => {
    const { page } = await alone();
    await page.$eval('[name=width]', (at) => (at as HTMLInputElement).select());
    await page.keyboard.type('90');
    await atRest(page);
    expect(await textOf(page, '.unseen[role=status]')).toBe('');
    await page.keyboard.press('Tab');
    await atRest(page);
    expect(await textOf(page, '.unseen[role=status]')).toBe(await summary(page));
    await page.close();
  });

  it.each([
    ['closed', 320, false, ''],
    ['closed', 1280, true, ''],
    ['opened', 320, true, '#size=blocks&borders=yes&cutting=yes&sleeve=yes&fabric.A.name=Sand&units=cm'],
    ['opened', 1280, false, '#size=bed&borders=yes&cutting=yes&sleeve=yes&fabric.A.name=Sand'],
    ['wrong', 360, false, '#width=abc'],
  ])('with nothing that axe finds: %s, %d px, dark %s', async (what, width, dark, hash) => {
    const { page } = await alone(hash, { width, dark });
    if (what === 'opened') await page.$$eval('details', (all) => all.forEach((at) => (at.open = true)));
    await atRest(page);
    expect(await findingsOn(page)).toEqual([]);
    await page.close();
  });
});
