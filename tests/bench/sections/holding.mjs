import { pasted, TEN, THOUSAND } from '../../tools/long-lists.mjs';
import { pageOf } from '../site.mjs';
import { median } from '../table.mjs';

export const title = 'Longest task, ms, from pasting a cut list of a thousand pieces until its plan is shown';

const RUNS = 5;
/** A browser does not tell of a shorter one. */
const SHORTEST_TOLD = 50;

export const inBrowser = true;

export const measure = async (site) => {
  const tab = await site.tab();
  const list = '<quilt-worksheet><quilt-cutting list="A | square | 3 | 1"></quilt-cutting></quilt-worksheet>';
  await tab.goto(site.put('holding.html', pageOf(['/dist/quilt-reckoner.js'], list)));
  const rows = [];
  for (const [name, long] of Object.entries(THOUSAND)) {
    const runs = { ten: [], thousand: [] };
    for (let run = 0; run < RUNS; run += 1) {
      runs.ten.push((await tab.evaluate(pasted, TEN)).longest);
      runs.thousand.push((await tab.evaluate(pasted, long)).longest);
    }
    const [ten, thousand] = [runs.ten, runs.thousand].map((all) => Math.max(SHORTEST_TOLD, median(all)));
    rows.push({ what: `of ${name}`, ours: [thousand], beside: [{ name: 'ten pieces', values: [ten] }] });
  }
  await tab.close();
  return { rows };
};
