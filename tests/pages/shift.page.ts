import { describe, expect, it } from 'vitest';
import { dist, openMade, painted, type Watched } from './made.js';
import { BARE, FALLBACK, waysToLoad, WHOLE } from '../hosts/loading.js';
import { blog } from '../hosts/quilt-parts.js';
import { site } from './site.js';

const { open } = site();

const PLAIN = '<script src="/classic.js"></script>';
const FOOT = '<script type="module" src="/m.js"></script>';

interface Seen {
  shifts: number[];
  sum: number;
  height: number;
  /** Whether words were painted before the script had come. */
  isPaintedBefore: boolean;
}

const see = async (html: string, width: number, { mayPaint }: { mayPaint: boolean }): Promise<Seen> => {
  // So slow is the network that a page which does not wait for the script is painted without it.
  const late = mayPaint ? 'painted' : 'paintable';
  const scripts = {
    '/classic.js': dist('quilt-reckoner.classic.js', late),
    '/m.js': dist('quilt-reckoner.js', late),
  };
  const visited: Watched = await openMade(open, html, scripts, { width, height: 3000 });
  const shifts = await visited.shifts();
  await painted(visited.page);
  const { height, paint, come } = await visited.page.evaluate(() => {
    const element = document.querySelector('quilt-backing, quilt-cutting, quilt-worksheet')!;
    const [script] = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
    return {
      height: element.shadowRoot!.querySelector('section')!.getBoundingClientRect().height,
      paint: performance.getEntriesByName('first-contentful-paint')[0]!.startTime,
      come: script!.responseEnd,
    };
  });
  expect(visited.faults).toEqual([]);
  await visited.page.close();
  return { shifts, sum: shifts.reduce((all, one) => all + one, 0), height, isPaintedBefore: paint < come };
};

describe('no jump when it loads', () => {
  it.each(waysToLoad({ classic: '/classic.js', module: '/m.js' }))(
    '%s: %s',
    async (_way, _what, html, isPaintedBefore) => {
      for (const width of [320, 1280]) {
        const seen = await see(html, width, { mayPaint: isPaintedBefore });
        expect(seen.height).toBeGreaterThan(300);
        expect(seen.isPaintedBefore).toBe(isPaintedBefore);
        expect(seen.shifts).toEqual([]);
      }
    },
  );

  it('a box with the final height does the same', async () => {
    const { height } = await see(blog(BARE, { head: PLAIN }), 1280, { mayPaint: false });
    const head = `<style>quilt-backing { display: block; min-block-size: ${Math.ceil(height)}px }</style>`;
    expect((await see(blog(FALLBACK, { head, foot: FOOT }), 1280, { mayPaint: true })).shifts).toEqual([]);
  });

  it.each(Object.entries(WHOLE))(
    'is not so by itself, and the measure sees it: a late script, %s',
    async (what, written) => {
      const { sum, isPaintedBefore } = await see(blog(written, { foot: FOOT }), 1280, { mayPaint: true });
      process.stdout.write(`layout shift of a late script and no box kept, ${what}: ${sum.toFixed(4)}\n`);
      expect(isPaintedBefore).toBe(true);
      expect(sum).toBeGreaterThan(0.001);
    },
  );
});
