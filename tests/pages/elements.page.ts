import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as headless from '../../src/reckon.js';
import { ELEMENTS, type Attribute } from './manifest.js';
import { site, whole, type Visited } from './site.js';

const { open } = site();

interface Shown {
  name: string;
  what: string;
  start: string;
  label: string;
  kind: string;
  options: string[];
  value: string;
}

const idOf = (tag: string, attribute: string): string => `${tag}.${attribute}`;
/** `strip-width` → `stripWidth`. */
const propertyOf = (attribute: string): string =>
  attribute.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const choicesOf = ({ type }: Attribute): string[] =>
  [...type.text.matchAll(/'([^']+)'/g)].map(([, choice = '']) => choice);
const isFlag = ({ type }: Attribute): boolean => type.text.includes('boolean');

/** What each row of an element's section says, folded or not. */
const rowsOf = (page: Page, tag: string): Promise<Shown[]> =>
  page.$$eval(`#${tag} .attribute`, (rows) =>
    rows.map((row): Shown => {
      const control = row.querySelector<HTMLInputElement>('input, select, textarea')!;
      return {
        name: control.id.split('.')[1]!,
        what: document
          .getElementById(control.getAttribute('aria-describedby')!)!
          .textContent.replaceAll('\u00a0', ' '),
        start: row.querySelector<HTMLElement>('.starts')!.textContent.replaceAll('\u00a0', ' '),
        label: control.labels![0]!.textContent,
        kind: control.type,
        options: [...row.querySelectorAll('option')].map(({ value }) => value),
        value: control.value,
      };
    }),
  );

/** Sets a control as a reader does who leaves the keyboard out. */
const set = (page: Page, tag: string, attribute: string, value: string): Promise<void> =>
  page.$eval(
    `[id="${idOf(tag, attribute)}"]`,
    (at, value) => {
      const control = at as HTMLInputElement;
      if (control.type === 'checkbox') control.checked = value !== '';
      else control.value = value;
      control.dispatchEvent(new Event('input', { bubbles: true }));
    },
    value,
  );

const attributeOf = (page: Page, tag: string, attribute: string): Promise<string | null> =>
  page.$eval(`#${tag} .live ${tag}`, (at, name) => at.getAttribute(name), attribute);
const snippetOf = (page: Page, tag: string): Promise<string> =>
  page.$eval(`#${tag} .snippet code`, (at) => at.textContent);
const answerOf = (page: Page, tag: string): Promise<string> =>
  page.$eval(`#${tag} .now`, (at) => at.textContent.replaceAll('\u00a0', ' '));
/** What the live example holds, once it has followed. */
const resultOf = async (page: Page, tag: string): Promise<string> => {
  await whole(page);
  return page.$eval(`#${tag} .live > *`, (at) =>
    JSON.stringify((at as HTMLElementTagNameMap['quilt-top']).result),
  );
};

/** A value that an attribute may have, and that it has not yet. */
const otherValueOf = (attribute: Attribute, now: string | null): string =>
  isFlag(attribute) ? 'on' : (choicesOf(attribute).find((choice) => choice !== now) ?? `${now ?? ''}7`);

/** For each element an attribute that makes another answer. */
const CHANGES: Record<string, [attribute: string, value: string]> = {
  'quilt-backing': ['width', '90'],
  'quilt-binding': ['cut', 'bias'],
  'quilt-borders': ['borders', '3'],
  'quilt-batting': ['bed', 'crib'],
  'quilt-sleeve': ['strip-width', '9'],
  'quilt-top': ['across', '6'],
  'quilt-block': ['count', '9'],
  'quilt-cutting': ['sheet', 'fat-eighth'],
  'quilt-worksheet': ['width', '90'],
  'quilt-fabric': ['price', '20'],
};

/** One page for all that is set on it: each test leaves it as it was. */
let visited: Visited;
beforeAll(async () => {
  visited = await open('/elements.html');
  await whole(visited.page);
});
afterAll(async () => {
  expect(visited.faults).toEqual([]);
  await visited.page.close();
});

describe.each(ELEMENTS)('the section of $tagName', ({ tagName, attributes }) => {
  let rows: Shown[];
  beforeAll(async () => (rows = await rowsOf(visited.page, tagName)));
  const rowOf = (name: string): Shown => rows.find((row) => row.name === name)!;

  it('has every attribute of it, once', () => {
    expect(rows.map(({ name }) => name).sort()).toEqual(attributes.map(({ name }) => name).sort());
    expect(attributes.length).toBeGreaterThan(3);
  });

  it.each(attributes)('says in plain words what $name does and what it starts as', (attribute) => {
    const { what, start, label, kind, options } = rowOf(attribute.name);
    expect(label).toBe(attribute.name);
    // A sentence or more; what it starts as stands apart from them.
    expect(what).toMatch(/^\S.{8,}\.$/s);
    expect(what).not.toMatch(/\bdefault\b|undefined|`|\[object/i);
    expect(start).toMatch(/^Starts as: [^.\s].*\.$/s);
    expect(start).not.toMatch(/undefined|null|`|calculator[’']s/);
    if (isFlag(attribute)) expect(start).toContain('off');
    else if (attribute.default) expect(start).toContain(attribute.default);
    const choices = choicesOf(attribute);
    expect(kind === 'checkbox').toBe(isFlag(attribute));
    expect(options).toEqual(choices.length ? ['', ...choices] : []);
  });

  it.each(attributes)(
    'sets $name on the live element and in the snippet, and takes it away',
    async (attribute) => {
      const { page } = visited;
      const { name } = attribute;
      const before = await attributeOf(page, tagName, name);
      expect(before === null ? '' : isFlag(attribute) ? 'on' : before).toBe(
        isFlag(attribute) && before === null ? '' : rowOf(name).value,
      );
      const value = otherValueOf(attribute, before);
      const written = isFlag(attribute) ? '' : value;
      await set(page, tagName, name, value);
      await whole(page);
      expect(await attributeOf(page, tagName, name)).toBe(written);
      const tag = (snippet: string): string => new RegExp(`<${tagName}([^>]*)>`).exec(snippet)![1]!;
      expect(` ${tag(await snippetOf(page, tagName)).trim()} `).toContain(
        isFlag(attribute) ? ` ${name} ` : ` ${name}="${value}" `,
      );
      await set(page, tagName, name, '');
      await whole(page);
      expect(await attributeOf(page, tagName, name)).toBe(null);
      expect(tag(await snippetOf(page, tagName))).not.toMatch(new RegExp(` ${name}(?==|\\s|$)`));
      if (before !== null) await set(page, tagName, name, before || 'on');
      await whole(page);
      expect(await attributeOf(page, tagName, name)).toBe(before);
    },
  );

  it('gives another answer after a change', async () => {
    const [attribute, value] = CHANGES[tagName]!;
    const { page } = visited;
    const was = await attributeOf(page, tagName, attribute);
    const before = await resultOf(page, tagName);
    await set(page, tagName, attribute, value);
    const after = await resultOf(page, tagName);
    expect(after).not.toBe(before);
    const name = tagName.replace('quilt-', '');
    const reckon = Object.entries(headless).find(([key]) => key.toLowerCase() === `reckon${name}`)?.[1];
    if (reckon && !['worksheet', 'cutting', 'block'].includes(name)) {
      // The same as without a page.
      const given = await page.$eval(`#${tagName} .live ${tagName}`, (at) =>
        at.getAttributeNames().map((name) => [name, at.getAttribute(name) || 'true']),
      );
      const input = Object.fromEntries(given.map(([name = '', value]) => [propertyOf(name), value]));
      const result = (reckon as (input: object) => { buy?: object; summary?: string })(input);
      const live = JSON.parse(after) as typeof result;
      expect(live.buy).toEqual(result.buy);
      expect(await answerOf(page, tagName)).toContain(result.summary!.replaceAll('\u00a0', ' '));
    }
    await set(page, tagName, attribute, was ?? '');
    expect(await resultOf(page, tagName)).toBe(before);
  });
});

describe('the page of the elements', () => {
  it('reads a default that no comment names from the calculator itself', async () => {
    const { page } = await open('/elements.html');
    await whole(page);
    for (const [name, reckon] of Object.entries({
      backing: headless.reckonBacking,
      top: headless.reckonTop,
    })) {
      const seams = ['in', 'cm'].map(
        (units) => reckon({ units }).working?.find(({ id }) => id === 'seam')?.value,
      );
      const seam = (await rowsOf(page, `quilt-${name}`)).find((row) => row.name === 'seam')!;
      expect(seam.start).toBe(`Starts as: ${seams[0]!}, or ${seams[1]!} in metric.`);
    }
    await page.close();
  });

  it('works by the keyboard on a phone: the answer follows, and what is wrong is said', async () => {
    const { page, faults } = await open('/elements.html', { width: 320 });
    await whole(page);
    await page.focus('[id="quilt-backing.width"]');
    const before = await answerOf(page, 'quilt-backing');
    await page.keyboard.press('End');
    await page.keyboard.type(' x');
    await page.waitForFunction(
      (text) => document.querySelector('#quilt-backing .now')!.textContent.replaceAll('\u00a0', ' ') !== text,
      {},
      before,
    );
    expect(await answerOf(page, 'quilt-backing')).toBe(
      headless.reckonBacking({ width: '58 x', length: '70' }).errors![0]!.message,
    );
    for (const _ of ' x') await page.keyboard.press('Backspace');
    await page.waitForFunction(
      (text) => document.querySelector('#quilt-backing .now')!.textContent.replaceAll('\u00a0', ' ') === text,
      {},
      before,
    );
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shows the same answer before its scripts run', async () => {
    const [plain, live] = [await open('/elements.html', { scripts: false }), await open('/elements.html')];
    await whole(live.page);
    const words = ({ page }: Visited): Promise<string[]> =>
      page.$$eval('.live > * > p', (all) => all.map((at) => at.textContent.replace(/\s+/g, ' ').trim()));
    const before = await words(plain);
    expect(before.length).toBeGreaterThan(5);
    expect(before).toEqual(await words(live));
    await plain.page.close();
    await live.page.close();
  });

  it('lists all attributes, and each leads to its place, folded or not', async () => {
    const { page } = await open('/elements.html');
    await whole(page);
    const names = [
      ...new Set(ELEMENTS.flatMap(({ attributes }) => attributes.map(({ name }) => name))),
    ].sort();
    expect(await page.$$eval('#index th[scope=row]', (all) => all.map((at) => at.textContent))).toEqual(
      names,
    );
    const focused = await page.$$eval('#index tbody tr', (rows) =>
      rows.flatMap((row) =>
        [...row.querySelectorAll('a')].map((link) => {
          link.click();
          return `${row.cells[0]!.textContent} ${document.activeElement!.id}`;
        }),
      ),
    );
    expect(focused.sort()).toEqual(
      ELEMENTS.flatMap(({ tagName, attributes }) =>
        attributes.map(({ name }) => `${name} ${idOf(tagName, name)}`),
      ).sort(),
    );
    await page.close();
  });

  it('tries out the looks: a property changes the calculator and the style sheet to copy', async () => {
    const { page } = await open('/elements.html');
    await whole(page);
    const property = (name: string): Promise<string> =>
      page.$eval('#model', (at, name) => getComputedStyle(at).getPropertyValue(name), name);
    const accent = await property('--quilt-accent');
    expect(await page.$eval('#css code', (at) => at.textContent)).toContain(`--quilt-accent: ${accent};`);
    await page.focus('[id="looks.--quilt-cloth"]');
    await page.keyboard.type('#c9a227');
    expect(await property('--quilt-cloth')).toBe('#c9a227');
    expect(await page.$eval('#css code', (at) => at.textContent)).toBe(
      `quilt-sleeve {\n  --quilt-accent: ${accent};\n  --quilt-cloth: #c9a227;\n}`,
    );
    await page.close();
  });
});
