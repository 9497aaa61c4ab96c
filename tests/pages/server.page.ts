import { beforeAll, describe, expect, it } from 'vitest';
import { BLOCKS, blog, QUILT, reserved, TABLE, WORKSHEET, WRITTEN } from '../hosts/quilt-parts.js';
import { isAlive, kept, look, mark, sheetsIn } from '../hosts/served.js';
import { compiledModules, scriptOf, startServer } from '../tools/modules.mjs';
import { once } from '../tools/once.mjs';
import { dist, openMade, painted, type Served, type Watched } from './made.js';
import { site } from './site.js';

const { open } = site();
const { folder } = compiledModules();
const write = startServer(folder);
/** What the server writes. It writes the same each time, so once is enough for all scripts that then come. */
const written = once((isWhole: boolean) => once((markup: string) => write(markup, isWhole)));
const TAGS = [...Object.keys(WRITTEN), 'quilt-worksheet'];
const SCRIPTS = ['hydrating', 'modules', 'bundle'];

let code: Record<string, string>;
beforeAll(async () => {
  const hydrating = '@lit-labs/ssr-client/lit-element-hydrate-support.js';
  code = {
    hydrating: await scriptOf(folder, hydrating, './index.js'),
    modules: await scriptOf(folder, './index.js'),
    bundle: dist('quilt-reckoner.js').code,
  };
});

/** A page from a server, as it is before its script has come. */
interface Waiting extends Watched {
  /** Lets the script come; gives every layout shift since. */
  come(): Promise<number[]>;
}

const served = async (
  markup: string,
  script: string,
  { head = '', isWhole = false } = {},
): Promise<Waiting> => {
  const html = blog(await written(isWhole)(markup), {
    head,
    foot: '<script type="module" async src="/script.js"></script>',
  });
  let release = (): void => undefined;
  const late = new Promise<void>((done) => (release = done));
  const scripts: Record<string, Served> = { '/script.js': { code: code[script]!, late } };
  const visited = await openMade(open, html, scripts, { height: 3000 }, 'domcontentloaded');
  const come = async (): Promise<number[]> => {
    await painted(visited.page);
    // A page may be painted while it still comes in: a table's columns then move with each row that is read.
    const whileParsed = await visited.shifts();
    release();
    await visited.page.waitForFunction(isAlive);
    return (await visited.shifts()).slice(whileParsed.length);
  };
  return { ...visited, come };
};

/** Types a width, as a reader does, and gives the answer before and after. */
const type = async ({ page }: Watched, tag: string): Promise<[string, string]> => {
  const answer = (): Promise<string> =>
    page.evaluate(
      (tag) => document.querySelector(tag)!.shadowRoot!.querySelector('.answer')!.textContent,
      tag,
    );
  const before = await answer();
  const input = await page.evaluateHandle(
    (tag) =>
      [
        ...document.querySelector(tag)!.shadowRoot!.querySelectorAll<HTMLInputElement>("input[type='text']"),
      ].find((at) => at.checkVisibility())!,
    tag,
  );
  await input.click({ clickCount: 3 });
  await page.keyboard.type('31 in');
  await page.keyboard.press('Tab');
  return [before, await answer()];
};

describe('a page that a server wrote', () => {
  it.each(Object.entries(WRITTEN))(
    '%s comes alive in place: every node stays, nothing moves',
    async (tag, written) => {
      const visited = await served(written, 'hydrating');
      const before = await visited.page.evaluate(look, tag);
      expect(before.isDefined).toBe(false);
      expect(before.boxes['svg']![3]).toBeGreaterThan(50);
      await visited.page.evaluate(mark, tag);
      const shifts = await visited.come();
      const after = await visited.page.evaluate(look, tag);
      expect(after).toEqual({ ...before, isDefined: true });
      const [left, all] = await visited.page.evaluate(kept);
      expect(left).toBe(all);
      expect(all).toBeGreaterThan(30);
      expect(shifts).toEqual([]);
      if (tag !== 'quilt-cutting') {
        const [first, second] = await type(visited, tag);
        expect(second).not.toBe(first);
      }
      expect(visited.faults).toEqual([]);
      await visited.page.close();
    },
  );

  it.each(
    Object.entries(WRITTEN).flatMap(([tag, written]) =>
      ['modules', 'bundle'].map((script) => [tag, script, written] as const),
    ),
  )('%s with the plain script (%s): one sheet, nothing moves', async (tag, script, written) => {
    const visited = await served(written, script);
    const before = await visited.page.evaluate(look, tag);
    const shifts = await visited.come();
    expect(await visited.page.evaluate(sheetsIn, tag)).toBe(1);
    const after = await visited.page.evaluate(look, tag);
    expect(after.boxes).toEqual(before.boxes);
    expect(after.isDefined).toBe(true);
    expect(shifts).toEqual([]);
    expect(visited.faults).toEqual([]);
    await visited.page.close();
  });

  it.each(SCRIPTS)(
    'keeps what a reader typed before the script came, and where she was (%s)',
    async (script) => {
      const visited = await served(WRITTEN['quilt-backing']!, script);
      const { page } = visited;
      const input = await page.evaluateHandle(() =>
        document.querySelector('quilt-backing')!.shadowRoot!.querySelector<HTMLInputElement>('#width')!,
      );
      await input.click({ clickCount: 3 });
      await page.keyboard.type('30');
      expect((await visited.page.evaluate(look, 'quilt-backing')).isDefined).toBe(false);
      await visited.come();
      await page.keyboard.type(' in');
      const state = await page.evaluate(() => {
        const element = document.querySelector('quilt-backing')!;
        const active = element.shadowRoot!.activeElement as HTMLInputElement;
        return { width: element.width, id: active.id, text: active.value };
      });
      expect(state).toEqual({ id: 'width', width: '30 in', text: '30 in' });
      expect(visited.faults).toEqual([]);
      await page.close();
    },
  );

  it.each(
    Object.entries({ 'quilt-cutting': TABLE, 'quilt-worksheet': WORKSHEET }).flatMap(([tag, written]) =>
      SCRIPTS.map((script) => [tag, script, written] as const),
    ),
  )(
    '%s is whole once the script is there, whatever stands inside, and moves nothing where its room is kept (%s)',
    async (tag, script, written) => {
      const visited = await served(written, script, { head: reserved(...TAGS) });
      const before = await visited.page.evaluate(look, tag);
      expect(before.isDefined).toBe(false);
      const shifts = await visited.come();
      const after = await visited.page.evaluate(look, tag);
      expect(after.html).toMatch(/(Buy|In all) [^]*\d/);
      expect(after.html).not.toContain('to get an answer');
      for (const part of TAGS)
        if (written.includes(`<${part}`)) expect(await visited.page.evaluate(sheetsIn, part), part).toBe(1);
      expect([after.boxes['host'], after.boxes['after']]).toEqual([
        before.boxes['host'],
        before.boxes['after'],
      ]);
      expect(shifts).toEqual([]);
      expect(visited.faults).toEqual([]);
      await visited.page.close();
    },
  );

  it.each(
    Object.entries({ WORKSHEET, QUILT, TABLE, BLOCKS }).flatMap(([what, written]) =>
      SCRIPTS.map((script) => [what, script, written] as const),
    ),
  )(
    'what is written whole (%s) moves nothing when it comes alive, and no room need be kept (%s)',
    async (_, script, written) => {
      const visited = await served(written, script, { isWhole: true });
      const { page } = visited;
      const tag = /^<([\w-]+)/.exec(written)![1]!;
      const before = await page.evaluate(look, tag);
      expect(before.html).toMatch(/(In all|So far) €\d|Buy \d/);
      const shifts = await visited.come();
      expect(await page.evaluate(look, tag)).toEqual({ ...before, isDefined: true });
      expect(shifts).toEqual([]);
      expect(visited.faults).toEqual([]);
      await page.close();
    },
  );
});
