import type { Page } from 'puppeteer-core';
import { ROOT } from '../tools/run.mjs';

interface Axe {
  run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[]; passes: unknown[] }>;
}

/** What axe finds on a whole page, in a few words each. */
export const findingsOn = async (page: Page): Promise<string[]> => {
  await page.addScriptTag({ path: `${ROOT}node_modules/axe-core/axe.min.js` });
  return page.evaluate(async () => {
    const { violations, passes } = await (window as unknown as { axe: Axe }).axe.run();
    return passes.length < 5
      ? ['it looked at nothing']
      : violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
};
