import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../tools/run.mjs';
import { site, reveal } from './site.js';

const { open } = site();
const QUICK = pathToFileURL(`${ROOT}dist/quick.html`).href;
const TAGS = ['quilt-backing', 'quilt-binding', 'quilt-borders', 'quilt-batting'];

/** What the page says of the four together. */
const flow = (page: Page): Promise<string> =>
  page.$eval('.flow', (at) => at.textContent.replaceAll('\u00a0', ' '));

interface Alone {
  page: Page;
  faults: string[];
  requests: string[];
}

/** The page from disk, without a network. Every request is recorded. */
const alone = async (hash = ''): Promise<Alone> => {
  const { page, faults } = await open('about:blank');
  const requests: string[] = [];
  page.on('console', (message) => message.type() === 'warn' && faults.push(message.text()));
  page.on('request', (request) => requests.push(request.url()));
  await page.setOfflineMode(true);
  await page.goto(QUICK + hash, { waitUntil: 'load' });
  return { page, faults, requests };
};

/** Everything that the four calculators show, and the text of the page's own cells. */
const shown = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [document, ...[...document.querySelectorAll('*')].map(({ shadowRoot }) => shadowRoot)]
      .filter((root) => root !== null)
      .flatMap((root) => [
        ...root.querySelectorAll<HTMLInputElement>('input, select, [part=value], [part=answer], .flow'),
      ])
      .map(
        (at) =>
          `${at.name || at.dataset['row'] || at.className}: ${at.value ?? at.innerText} ${at.checked ?? ''}`,
      ),
  );
const widths = (page: Page): Promise<string[]> =>
  page.$$eval(TAGS.join(), (all) =>
    all.map(({ shadowRoot }) => shadowRoot!.querySelector<HTMLInputElement>('[data-row=width]')!.value),
  );
const answers = (page: Page): Promise<string[]> =>
  page.$$eval(TAGS.join(), (all) =>
    all.map(({ shadowRoot }) => shadowRoot!.querySelector<HTMLElement>('[part=answer]')!.innerText),
  );

const write = async (page: Page, selector: string, text: string): Promise<void> => {
  await reveal(page, selector);
  await (await page.$(selector))!.click({ count: 3 });
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
};
const unfold = (page: Page, tag: string): Promise<void> =>
  page.$eval(`${tag} >>> button[aria-expanded=false]`, (at) => at.click());

describe('quick.html, from disk and without a network', () => {
  it('answers for all four at once, and asks for nothing', async () => {
    const { page, faults, requests } = await alone();
    for (const answer of await answers(page)) expect(answer).toMatch(/^Buy\s+\d/);
    await write(page, 'input[name=width]', '60');
    expect(requests.filter((url) => !url.startsWith('data:'))).toEqual([QUICK]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shares one size between the four, whichever place it is typed in', async () => {
    const { page, faults } = await alone();
    await write(page, 'input[name=width]', '61 1/2');
    expect(await widths(page)).toEqual(TAGS.map(() => '61 1/2 in'));
    const before = await answers(page);
    await write(page, 'quilt-borders >>> [data-row=width]', '150 cm');
    expect(await widths(page)).toEqual(TAGS.map(() => '150 cm'));
    expect(await page.$eval('input[name=width]', (at) => at.value)).toBe('150 cm');
    const after = await answers(page);
    for (const [at, answer] of after.entries()) expect(answer).not.toBe(before[at]);
    await write(page, 'quilt-backing >>> [data-row=fabricWidth]', '106');
    expect(
      await page.$eval('quilt-binding >>> [data-row=fabricWidth]', (at) => (at as HTMLInputElement).value),
    ).toBe('106 in');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says where the four do not mean the same quilt', async () => {
    const { page, faults } = await alone();
    const said = (): Promise<string> => flow(page);
    // 58 + 2 × (2 + 4 1/2) by 70 + 13
    expect(await said()).toMatch(/for a quilt of 58 × 70 in.*make it 71 × 83 in/);
    await reveal(page, 'quilt-batting >>> [data-row=bed]');
    await page.type('quilt-batting >>> [data-row=bed]', 'queen');
    // Mattress 60 × 80 (“Mattresses”, sizes.com) with a drop of 12 in: 84 × 92
    expect(await said()).toContain('The batting is for the bed, a quilt of 84 × 92 in');
    await page.select('select[name=units]', 'cm');
    expect(await said()).toContain('147.32 × 177.8 cm');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says beside the size what is wrong with it', async () => {
    const { page, faults } = await alone();
    await write(page, 'input[name=length]', 'abc');
    expect(await flow(page)).toContain('“abc” is not a length');
    const invalid = (): Promise<string[]> =>
      page.$$eval('form [aria-invalid=true]', (all) => all.map((at) => (at as HTMLInputElement).name));
    expect(await invalid()).toEqual(['length']);
    await write(page, 'input[name=length]', '70');
    expect(await invalid()).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('gives backing, binding and batting the size with borders, where the size is the top’s', async () => {
    const { page, faults } = await alone();
    await page.select('select[name=size]', 'top');
    // 58 + 2 × (2 + 4 1/2) by 70 + 13
    expect(await flow(page)).toContain('71 × 83');
    expect(
      await page.$$eval('quilt-backing, quilt-binding, quilt-batting', (all) =>
        all.map(({ shadowRoot }) =>
          shadowRoot!.querySelector('[data-row=width]')!.textContent.replaceAll('\u00a0', ' ').trim(),
        ),
      ),
    ).toEqual(['71 in', '71 in', '71 in']);
    await write(page, 'quilt-borders >>> [data-row=borders]', '3');
    // 58 + 2 × (3 + 4 1/2) by 70 + 15
    expect(await flow(page)).toContain('73 × 85');
    await page.select('select[name=size]', 'finished');
    expect(await widths(page)).toEqual(TAGS.map(() => '58 in'));
    expect(faults).toEqual([]);
    await page.close();
  });

  it('gives no size while the borders round a top are wrong, so that nothing is too small', async () => {
    const { page, faults } = await alone();
    await page.select('select[name=size]', 'top');
    const [before] = await answers(page);
    await write(page, 'quilt-borders >>> [data-row=borders2]', '4 1/');
    const waiting = TAGS.filter((tag) => tag !== 'quilt-borders');
    const errors = (at: Page): Promise<boolean[]> =>
      at.$$eval(waiting.join(), (all) =>
        all.map((at) => !!(at as HTMLElementTagNameMap['quilt-backing']).result.errors),
      );
    expect(await errors(page)).toEqual([true, true, true]);
    expect((await answers(page))[0]).toMatch(/Fix “.*” to update this/);
    expect(await flow(page)).toMatch(/^Borders: .*need the size with borders/);
    expect(await page.$$eval('form [aria-invalid=true]', (all) => all.length)).toBe(0);

    const link = new URL(page.url()).hash;
    await write(page, 'quilt-borders >>> [data-row=borders2]', '4 1/2');
    expect((await answers(page))[0]).toBe(before);
    const fresh = await alone(link);
    expect(await errors(fresh.page)).toEqual([true, true, true]);
    expect([...faults, ...fresh.faults]).toEqual([]);
    await page.close();
    await fresh.page.close();
  });

  it('keeps what is typed into a sheet where the size is the top’s', async () => {
    const { page, faults } = await alone();
    await page.select('select[name=size]', 'top');
    await write(page, 'quilt-borders >>> [data-row=width]', '60');
    await write(page, 'quilt-backing >>> [data-row=fabricWidth]', '106');
    expect(await page.$$eval('form input', (all) => all.map(({ value }) => value))).toEqual([
      '60',
      '70',
      '106',
    ]);
    // 60 + 2 × (2 + 4 1/2)
    expect(await flow(page)).toContain('73 × 83 in');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('keeps a shop’s packages in the units they were written in', async () => {
    const { page, faults } = await alone(
      '#units=cm&width=150&length=180&batting.packages=klein 170 x 200;gross 250 x 260',
    );
    // 150 + 2 × 10 = 170 cm: the small one is just wide enough, but not with the 4 in that inches have, 170.32 cm.
    const bought = (): Promise<string | undefined> =>
      page.$eval('quilt-batting', ({ result }) => result.buy?.text);
    expect(await bought()).toBe('1 klein package, 170 × 200 cm');
    await page.select('select[name=units]', 'in');
    expect(await bought()).toMatch(/^1 gross package, /);
    await page.select('select[name=units]', 'cm');
    expect(await bought()).toBe('1 klein package, 170 × 200 cm');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('keeps a measure in its units while something else is wrong', async () => {
    const { page, faults } = await alone();
    await write(page, 'quilt-borders >>> [data-row=border1Sides]', '73');
    await write(page, 'quilt-borders >>> [data-row=borders]', 'wide');
    await page.select('select[name=units]', 'cm');
    expect(await page.$eval('quilt-borders', ({ measured }) => measured)).toEqual({ border1Sides: '73 in' });
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shows the same quilt in centimetres when asked, and in inches again', async () => {
    const { page, faults } = await alone();
    await write(page, 'input[name=length]', '72');
    await write(page, 'quilt-backing >>> [data-row=overage]', '3');
    await write(page, 'quilt-borders >>> [data-row=border1Sides]', '73');
    /** The exact inches of every row that comes from what was written: the defaults are round in each unit. */
    const lengths = (): Promise<string[]> =>
      page.$$eval(TAGS.join(), (all) =>
        all.flatMap((at) =>
          (at as HTMLElementTagNameMap['quilt-backing']).result.working
            .filter(({ id }) => /^(width|length|border1Sides)$/.test(id))
            .map(({ id, inches, value }) => `${id} ${inches ?? value.replace(/ in/g, '')}`),
        ),
      );
    const before = await lengths();
    await page.select('select[name=units]', 'cm');
    // 58 × 2.54
    expect(await widths(page)).toEqual(TAGS.map(() => '147.32 cm'));
    for (const answer of await answers(page)) expect(answer).not.toMatch(/\d in\b/);
    expect(await lengths()).toEqual(before);
    await page.select('select[name=units]', 'in');
    expect(await widths(page)).toEqual(TAGS.map(() => '58 in'));
    expect(await lengths()).toEqual(before);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('keeps its state in the address: a reload, and the link in a fresh page, show the same', async () => {
    const { page, faults } = await alone();
    const start = await shown(page);
    await write(page, 'input[name=width]', '61 1/2"');
    await write(page, 'input[name=length]', `6' 2"`);
    await write(page, 'quilt-borders >>> [data-row=borders]', '1 1/2');
    await write(page, 'quilt-borders >>> [data-row=borders2]', '5 & more = 1');
    await write(page, 'quilt-borders >>> [data-row=borders2]', '5');
    await reveal(page, 'quilt-borders >>> [data-row=corners]');
    await page.select('quilt-borders >>> [data-row=corners]', 'squares');
    await unfold(page, 'quilt-backing');
    await page.click('quilt-backing >>> [data-row=oneWay]');
    await write(page, 'quilt-backing >>> [data-row=price]', '12.50');
    await write(page, 'quilt-binding >>> [data-row=finished]', '3/8');
    await write(page, 'quilt-batting >>> [data-row=overage]', '3');
    await write(page, 'quilt-borders >>> [data-row=border1Sides]', '75 1/4');
    await page.select('select[name=units]', 'cm');
    const folded = (lines: string[]): string[] =>
      lines.filter((line) =>
        /answer|flow|^(width|length|size|units|borders|corners|border1Sides|finished|overage|need)/.test(
          line,
        ),
      );
    const before = folded(await shown(page));
    expect(before).not.toEqual(folded(start));

    const link = new URL(page.url()).hash;
    const fresh = await alone(link);
    expect(folded(await shown(fresh.page))).toEqual(before);
    expect(await fresh.page.$eval('quilt-backing', (at) => at.oneWay)).toBe(true);

    await page.reload({ waitUntil: 'load' });
    expect(folded(await shown(page))).toEqual(before);
    expect(new URL(page.url()).hash).toBe(link);
    expect([...faults, ...fresh.faults]).toEqual([]);
    await page.close();
    await fresh.page.close();
  });

  it('forgets in its address a box that was cleared again and a row that was put back', async () => {
    const { page } = await alone();
    await write(page, 'input[name=width]', '58');
    const link = page.url();
    await unfold(page, 'quilt-backing');
    for (const ticked of [true, false]) {
      await page.click('quilt-backing >>> [data-row=oneWay]');
      expect(await page.$eval('quilt-backing', (at) => at.oneWay)).toBe(ticked);
      expect(page.url() === link).toBe(!ticked);
    }
    await page.close();
  });

  it('follows a link that is opened in the same page', async () => {
    const { page, faults } = await alone('#width=40&length=50');
    expect((await widths(page))[0]).toBe('40 in');
    await page.evaluate(() => void (location.hash = '#width=44&length=55&borders.borders=3'));
    await page.waitForFunction(() => document.querySelector('quilt-backing')!.width === '44');
    expect(await widths(page)).toEqual(TAGS.map(() => '44 in'));
    expect(await page.$eval('quilt-borders', (at) => at.borders)).toBe('3');
    expect(faults).toEqual([]);
    await page.close();
  });

  it.each([
    ['an empty width', '#width='],
    [
      'markup, and choices that are none',
      '#width=%3Cimg%20src%3Dx%20onerror%3D%22hit%3D1%22%3E&units=furlong&size=x',
    ],
    ['keys that are none', '#backing.measured=nonsense&borders.corners=constructor&nothing.at=all'],
    ['bytes that are no text', '#width=%E0%A4%A&=&&'],
    ['10,000 digits', `#width=${'9'.repeat(10_000)}`],
  ])('survives a link that is wrong: %s', async (_, hash) => {
    const { page, faults } = await alone(hash);
    expect(
      await page.$$eval(TAGS.join(), (all) =>
        all.map(({ shadowRoot }) => !!shadowRoot!.querySelector('[data-row=length]')),
      ),
    ).toEqual(TAGS.map(() => true));
    expect((await shown(page)).join('\n')).not.toMatch(/\b(NaN|undefined|Infinity)\b/);
    expect(await page.evaluate(() => 'hit' in window)).toBe(false);
    expect(faults).toEqual([]);
    await page.close();
  });
});
