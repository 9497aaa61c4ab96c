import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { site, writeIn } from './site.js';

const { open } = site();

const textOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (at) => (at as HTMLElement).innerText.replace(/\s+/g, ' ').trim());
const press = (page: Page, selector: string): Promise<void> =>
  page.$eval(selector, (at) => (at as HTMLElement).click());
const basket = (page: Page): Promise<string[]> =>
  page.$$eval('#basket li', (all) =>
    all.map((at) => [...at.querySelectorAll('span')].map((part) => part.textContent).join(' | ')),
  );
const isOff = (page: Page, selector: string): Promise<boolean> =>
  page.$eval(selector, (at) => (at as HTMLButtonElement).disabled);
const ADD = '#backing .add';
const WIDTH = 'quilt-backing >>> [data-row=width]';

// Long Horizon is 106 in usable, at €19.80 a yard; 4 in overage on each side. The need is the quilt's other side + 8 in.
describe('the product page', () => {
  it('shows what the reckoned amount costs, and follows what is typed', async () => {
    const { page, faults } = await open('/product.html');
    // 72 + 8 = 80 in = 2 2/9 yd: 2 1/4 yd × 19.80 = 44.55.
    expect(await textOf(page, '#backing .sum')).toBe('2 1/4 yd: €44.55');
    // The longer side along the cloth then takes less: 98 + 8 = 106 in across, 86 + 8 = 94 in: 2 5/8 yd × 19.80 = 51.975.
    await writeIn(page, WIDTH, '98');
    expect(await textOf(page, '#backing .sum')).toBe('2 5/8 yd: €51.98');
    expect(await textOf(page, '#packages .sum')).toBe('1 large package, 90 × 108 in: €38.50');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('puts several things in the basket, adds them up, and takes them out again', async () => {
    const { page, faults } = await open('/product.html');
    await press(page, ADD);
    await press(page, '#packages .add');
    await page.$eval('#kits input', (at) => (at.value = '2'));
    await press(page, '#kits button');
    await press(page, '#plain button');
    expect(await basket(page)).toEqual([
      'Long Horizon, 2 1/4 yd | €44.55',
      'Batting, 1 large package, 90 × 108 in | €38.50',
      'Low Tide kit × 2 | €358.00',
      'Long Horizon, 1 yd | €19.80',
    ]);
    // 44.55 + 38.50 + 358 + 19.80
    expect(await textOf(page, '#total')).toBe('€460.85');
    expect(await textOf(page, '#count')).toBe('4');
    await press(page, '#basket li:nth-child(3) button');
    expect(await textOf(page, '#total')).toBe('€102.85');
    expect(await textOf(page, '.said')).toBe('Low Tide kit × 2 is out of your basket.');
    for (let left = 3; left > 0; left--) await press(page, '#basket li button');
    expect([await basket(page), await textOf(page, '.empty')]).toEqual([[], 'Nothing in it yet.']);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('never sells more than is on the bolt, and says so', async () => {
    const { page, faults } = await open('/product.html');
    // 5 1/2 yd, of which 2 1/4 go into the basket: 3 1/4; then 1.
    await press(page, ADD);
    expect(await textOf(page, '#stock')).toBe('3 1/4 yd left on the bolt');
    await press(page, ADD);
    expect(await textOf(page, '#stock')).toBe('1 yd left on the bolt');
    expect(await isOff(page, ADD)).toBe(true);
    const sentence = await textOf(page, '#backing .sum');
    expect(sentence).toMatch(/^In stock: 1 yd, and this takes 2 1\/4 yd\. .*take less\.$/);
    const answer = await textOf(page, 'quilt-backing >>> [part=answer]');
    expect(answer).toContain('Buy 2 1/4 yd');
    expect(answer).toContain(sentence);
    await press(page, '#basket li button');
    expect([await isOff(page, ADD), await textOf(page, '#backing .sum')]).toEqual([
      false,
      '2 1/4 yd: €44.55',
    ]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('cannot be bought from while something is wrong, and starts again on request', async () => {
    const { page, faults } = await open('/product.html');
    await writeIn(page, WIDTH, 'wide');
    expect(await isOff(page, ADD)).toBe(true);
    expect(await textOf(page, '#backing .sum')).toMatch(/^“wide” /);
    await press(page, '#backing [type=reset]');
    await page.waitForFunction(() => !document.querySelector<HTMLButtonElement>('#backing .add')!.disabled);
    expect(await textOf(page, '#backing .sum')).toBe('2 1/4 yd: €44.55');
    expect(await page.$eval(WIDTH, (at) => (at as HTMLInputElement).value)).toBe('72 in');
    expect(faults).toEqual([]);
    await page.close();
  });

  it('sells batting in packages only, and says so if none is large enough or the reader wants a roll', async () => {
    const { page, faults } = await open('/product.html');
    const sent = (): Promise<unknown> =>
      page.$eval('#packages', (form) => new FormData(form as HTMLFormElement).get('batting'));
    expect(await sent()).toBe('1');
    const refused = async (): Promise<void> => {
      expect(await isOff(page, '#packages .add')).toBe(true);
      expect(await textOf(page, '#packages .sum')).toMatch(
        /from a roll, .* yd(, .* in wide)?, and we sell packages/,
      );
      expect(await sent()).toBe(null);
      expect(await page.$eval('#packages', (form) => (form as HTMLFormElement).checkValidity())).toBe(false);
    };
    // 110 + 8 = 118 in: more than 108, the large package's longer side.
    await writeIn(page, 'quilt-batting >>> [data-row=length]', '110');
    await refused();
    await press(page, '#packages [type=reset]');
    await page.waitForFunction(() => !document.querySelector<HTMLButtonElement>('#packages .add')!.disabled);
    expect(await sent()).toBe('1');
    await page.$eval('quilt-batting', (at) => {
      at.roll = '96';
      at.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await refused();
    expect(faults).toEqual([]);
    await page.close();
  });

  it('goes by keyboard alone, from the width to the basket and out again', async () => {
    const { page, faults } = await open('/product.html');
    const here = (): Promise<string> =>
      page.evaluate(() => {
        const at = document.activeElement!;
        return at.shadowRoot?.activeElement?.getAttribute('data-row') ?? at.textContent.trim();
      });
    const tabTo = async (place: string): Promise<void> => {
      for (let steps = 0; (await here()) !== place; steps++) {
        expect(steps, `on the way to ${place}`).toBeLessThan(60);
        await page.keyboard.press('Tab');
      }
    };
    await tabTo('width');
    await page.keyboard.type('60');
    await tabTo('Add this much');
    await page.keyboard.press('Enter');
    // 60 + 8 = 68 in: 2 yd × 19.80.
    expect(await basket(page)).toEqual(['Long Horizon, 2 yd | €39.60']);
    await tabTo('Remove');
    await page.keyboard.press('Enter');
    expect([await basket(page), await page.evaluate(() => document.activeElement!.id)]).toEqual([
      [],
      'basket',
    ]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('says what the kit’s things cost one by one as the worksheet reckons it', async () => {
    const { page } = await open('/product.html');
    const singly = await textOf(page, '#singly');
    await page.close();
    const { page: whole } = await open('/worksheet.html');
    await whole.waitForFunction(() => {
      const { result } = document.querySelector('quilt-worksheet')!;
      return result.buy && !result.notes.some((note) => note.includes('planned'));
    });
    expect(await whole.$eval('quilt-worksheet', ({ result }) => !result.errors && result.total!.text)).toBe(
      singly,
    );
    await whole.close();
  });

  it('sells by the yard without scripts', async () => {
    const { page, faults } = await open('/product.html', { scripts: false });
    expect(await textOf(page, 'quilt-backing')).toBe('For a quilt 72 × 86 in: 2 1/4 yd, no seam.');
    await (await page.$('#plain button'))!.click();
    await page.waitForFunction("location.search === '?yards=1'");
    expect(faults).toEqual([]);
    await page.close();
  });
});
