import type { Page } from 'puppeteer-core';
import { describe, expect, it } from 'vitest';
import { site, unfold, whole, writeIn, type Visited } from './site.js';

const { open } = site();

/** So many changes, one after another. `STEPS=5000` makes as many as somebody has patience for. */
const STEPS = Number(process.env['STEPS'] ?? 120);
/** After so many of them, the quilt is held against one that is made anew. */
const EACH = 10;

const sewAlong = async (visit = {}): Promise<Visited> => {
  const visited = await open('/sew-along.html', visit);
  await whole(visited.page);
  return visited;
};

interface Line {
  letter?: string;
  fabric?: string;
  text: string;
}
interface Known {
  buy?: { text: string };
  errors?: { message: string }[];
  notes?: string[];
  soFar?: boolean;
  fabrics?: Line[];
  items?: Line[];
  finished?: { width: string; length: string };
  blocks?: number;
  count?: number;
}

/** What an element holds. */
const held = (page: Page, selector: string): Promise<Known> =>
  page.$eval(selector, (at) => {
    const { result } = at as HTMLElement & { result: object };
    return JSON.parse(JSON.stringify(result)) as object;
  });
const counts = (page: Page): Promise<number[]> =>
  page.$$eval('quilt-block', (all) => all.map((at) => (at.result as unknown as { count: number }).count));
const set = async (page: Page, selector: string, properties: object): Promise<void> => {
  await page.$eval(selector, (at, properties) => void Object.assign(at, properties), properties);
  await whole(page);
};

describe('the sew-along', () => {
  it('has an answer everywhere, and its twenty blocks fill the top', async () => {
    const { page, faults } = await sewAlong();
    const all = await page.$$eval('quilt-worksheet, quilt-worksheet *', (all) =>
      all.flatMap((at) => ('result' in at ? [at.result as { errors?: object[]; soFar?: boolean }] : [])),
    );
    expect(all.flatMap(({ errors = [] }) => errors)).toEqual([]);
    const { fabrics, items, soFar } = await held(page, 'quilt-worksheet');
    expect(soFar).toBeUndefined();
    // Every one of its fifteen fabrics is on the list.
    const letters = [...fabrics!.map(({ letter }) => letter), ...items!.map(({ fabric }) => fabric)];
    expect([...new Set(letters)].filter(Boolean).sort()).toEqual([...'ABCDEFGHIJKLMNO']);
    expect((await counts(page)).reduce((all, count) => all + count)).toBe(20);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is right again for a reader with another row and larger blocks', async () => {
    const { page, faults } = await sewAlong();
    const before = await held(page, 'quilt-worksheet');
    await writeIn(page, 'quilt-top >>> [data-row=down]', '6', 'Enter');
    await writeIn(page, 'quilt-top >>> [data-row=block]', '10', 'Enter');
    await whole(page);
    // Geometry: 4 × 10 + 5 × 2 = 50, 6 × 10 + 7 × 2 = 74.
    expect((await held(page, 'quilt-top')).finished).toEqual({ width: '50', length: '74' });
    // Four more blocks, all of the kind that fills.
    expect(await counts(page)).toEqual([3, 7, 2, 3, 2, 3, 2, 2]);
    // With borders of 1 1/2 and 5 on each side: 50 + 13 and 74 + 13.
    expect((await held(page, 'quilt-borders')).finished).toEqual({ width: '63', length: '87' });
    const after = await held(page, 'quilt-worksheet');
    expect(after.soFar).toBeUndefined();
    expect(after.fabrics!.map(({ text }) => text)).not.toEqual(before.fabrics!.map(({ text }) => text));
    expect(faults).toEqual([]);
    await page.close();
  });

  it('asks which block to make more of if none fills, and a press answers', async () => {
    const { page, faults } = await sewAlong();
    await set(page, 'quilt-block[fills]', { fills: false, count: '3' });
    await set(page, 'quilt-top', { down: '6' });
    expect((await held(page, 'quilt-worksheet')).soFar).toBe(true);
    await page.$eval('quilt-worksheet', (at) =>
      [...at.shadowRoot!.querySelectorAll('button')]
        .find(({ textContent }) => textContent.trim() === '4 more Net')!
        .click(),
    );
    await whole(page);
    expect((await held(page, 'quilt-worksheet')).soFar).toBeUndefined();
    expect((await held(page, 'quilt-block[name=Net]')).count).toBe(7);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('shows the whole quilt in the cloth of its fabrics, on a phone too', async () => {
    const { page } = await sewAlong({ width: 320 });
    await unfold(page, 'quilt-worksheet');
    await page.waitForFunction(() =>
      document.querySelector('quilt-worksheet')!.shadowRoot!.querySelector('.whole svg'),
    );
    const drawn = await page.$eval('quilt-worksheet', (at) => {
      const svg = at.shadowRoot!.querySelector('.whole svg')!;
      return {
        title: svg.getAttribute('aria-label')!,
        colours: new Set([...svg.querySelectorAll('path')].map((path) => path.getAttribute('fill'))).size,
        sideways: document.documentElement.scrollWidth,
      };
    });
    for (const name of ['3 Beacon', '2 Gull', '2 Pier', 'binding']) expect(drawn.title).toContain(name);
    // All fabrics but the backing.
    expect(drawn.colours).toBeGreaterThanOrEqual(14);
    expect(drawn.sideways).toBeLessThanOrEqual(320);
    await page.close();
  });
});

/** Runs in the page: changes one input at random. Returns what it changed. */
const change = (seed: number): string => {
  let state = seed;
  const roll = (sides: number): number => {
    state = (Math.imul(state ^ (state >>> 15), 2246822519) ^ 3266489917) >>> 0;
    return state % sides;
  };
  const ways: [selector: string, property: string, values: unknown[]][] = [
    ['quilt-top', 'block', ['12', '10', '9 1/2', '8']],
    ['quilt-top', 'across', ['3', '4', '5']],
    ['quilt-top', 'down', ['4', '5', '6', '7']],
    ['quilt-top', 'sashing', ['0', '1 1/4', '2']],
    ['quilt-top', 'cornerstones', [true, false]],
    ['quilt-top', 'frame', [true, false]],
    ['quilt-top', 'set', ['straight', 'on-point']],
    ['quilt-block', 'count', ['0', '1', '2', '3', '5', undefined]],
    ['quilt-block', 'method', ['two-one', 'eight-four', 'two-four', 'strips']],
    ['quilt-block', 'fills', [true, false]],
    ['quilt-fabric', 'sheet', ['fat-quarter', 'fat-eighth', undefined]],
    ['quilt-fabric', 'fabricWidth', ['40', '42', undefined]],
    ['quilt-borders', 'borders', ['1 1/2, 5', '3', '2 1/4, 1, 6']],
    ['quilt-borders', 'corners', ['sides-first', 'squares', 'mitred', undefined]],
    ['quilt-binding', 'stripWidth', ['2 1/4', '2 1/2', undefined]],
    ['quilt-backing', 'overage', ['3', '4', '6']],
    ['quilt-batting', 'overage', ['3', '4']],
    ['quilt-worksheet', 'shrinkage', ['0', '3']],
    ['quilt-worksheet', 'increment', ['1/8 yd', '1/4 yd', 'thirds']],
  ];
  const [selector, property, values] = ways[roll(ways.length)]!;
  const elements = document.querySelectorAll(selector);
  const at = roll(elements.length);
  const value = values[roll(values.length)];
  Object.assign(elements[at]!, { [property]: value });
  return `${selector} ${at} ${property} = ${String(value)}`;
};

/** Runs in the page: a copy of the quilt with all its values, which has never been any other. */
const copy = (): void => {
  const quilt = document.querySelector('quilt-worksheet')!;
  const twin = quilt.cloneNode(true) as HTMLElement;
  twin.id = 'twin';
  const all = (root: Element): Element[] => [root, ...root.querySelectorAll('*')];
  const twins = all(twin);
  for (const [at, element] of all(quilt).entries()) {
    const { elementProperties } = element.constructor as { elementProperties?: Map<string, unknown> };
    for (const key of elementProperties?.keys() ?? [])
      Object.assign(twins[at]!, { [key]: Reflect.get(element, key) as unknown });
  }
  document.body.append(twin);
};

/** Runs in the page: what a quilt holds, element by element. */
const state = (selector: string): { held: string[]; short: string[]; planning: boolean } => {
  const root = document.querySelector(selector)!;
  const inches = (text: string): number =>
    text.split(' ').reduce((all, part) => {
      const [over = '0', under = '1'] = part.split('/');
      return all + Number(over) / Number(under);
    }, 0);
  interface Piece {
    count: number;
    width: string;
    length: string;
  }
  interface Plan {
    fabric: string;
    need: string;
    width: string;
    height: string;
    sheets?: number;
    pieces: Piece[];
  }
  const results = [root, ...root.querySelectorAll('*')].flatMap((at) =>
    'result' in at ? [[at.localName, at.result as { fabrics?: Plan[]; count?: number }] as const] : [],
  );
  const short = results.flatMap(([name, { fabrics = [] }]) =>
    name !== 'quilt-block'
      ? []
      : fabrics.flatMap(({ fabric, need, width, height, sheets, pieces }) => {
          const area = pieces.reduce(
            (all, piece) => all + piece.count * inches(piece.width) * inches(piece.length),
            0,
          );
          const room = inches(width) * (sheets ? sheets * inches(height) : inches(need));
          return area > room + 1e-6 ? [`${fabric}: ${area} on ${room}`] : [];
        }),
  );
  const held = results.map(([name, result]) => `${name} ${JSON.stringify(result)}`);
  return { held, short, planning: held.some((text) => text.includes('being planned')) };
};

describe('any change of the sew-along', () => {
  it('comes to what the same quilt comes to from the start, and no block is ever short', async () => {
    const { page, faults } = await sewAlong();
    const stateOf = async (selector: string): Promise<ReturnType<typeof state>> => {
      await page.waitForFunction(`!(${state.toString()})(${JSON.stringify(selector)}).planning`, {
        timeout: 0,
      });
      await whole(page);
      return page.evaluate(state, selector);
    };
    const changes: string[] = [];
    for (let step = 1; step <= STEPS; step += 1) {
      changes.push(await page.evaluate(change, step * 7919));
      if (step % EACH) continue;
      const now = await stateOf('quilt-worksheet');
      await page.evaluate(copy);
      const anew = await stateOf('#twin');
      await page.evaluate(() => document.querySelector('#twin')!.remove());
      const about = changes.slice(-EACH).join('; ');
      expect(now.short, about).toEqual([]);
      expect(now.held.length, about).toBe(anew.held.length);
      for (const [at, one] of now.held.entries()) expect(one, about).toBe(anew.held[at]);
    }
    expect(faults).toEqual([]);
    await page.close();
  }, 1_800_000);
});
