import { WORKSHEET } from '../elements.mjs';
import { pageOf } from '../site.mjs';
import { atMost, median } from '../table.mjs';

export const title =
  'First answers of a page, ms from the start of loading, and its longest task (a browser tells of none below 50 ms)';

/** What is put on a page how often, how many rows it has, and the script that it needs. */
const KINDS = [
  {
    name: 'backings',
    tag: '<quilt-backing width="58" length="70"></quilt-backing>',
    script: '/dist/quilt-backing.js',
    counts: [1, 10, 100, 500],
    rows: 22,
  },
  { name: 'worksheets', tag: WORKSHEET, script: '/dist/quilt-reckoner.js', counts: [1, 20], rows: 197 },
];
const CPU = [1, 4];

/** Runs of a page: so many, or fewer where they take long. */
const RUNS = 5;
const LONG = 12_000;

/** A fresh tab's time to the answers, and its longest task. */
const loaded = async (site, url, cpu) => {
  const tab = await site.tab();
  const client = await tab.createCDPSession();
  await client.send('Emulation.setCPUThrottlingRate', { rate: cpu });
  await tab.goto(url, { timeout: 0 });
  await tab.waitForFunction('window.first', { timeout: 0 });
  const { answer, longest } = await tab.evaluate('first');
  await tab.close();
  return [answer, longest];
};

/** The medians of these pages, which take turns. */
const compared = async (site, urls, cpu) => {
  const runs = urls.map(() => []);
  const start = Date.now();
  do for (const [at, url] of urls.entries()) runs[at].push(await loaded(site, url, cpu));
  while (runs[0].length < RUNS && Date.now() - start < LONG);
  return runs.map((all) => [0, 1].map((at) => median(all.map((values) => values[at]))));
};

const goalOf = (name, count, cpu, [answer, longest]) => {
  if (name === 'worksheets' && count === 1 && cpu === 4)
    return { goal: atMost('answer ≤ 1,000 ms', answer, 1000) };
  if (count >= 20 && count !== 100 && cpu === 1) return { goal: atMost('no task > 200 ms', longest, 200) };
  return {};
};

const rowOf = async (site, { name, tag, script, rows }, count, cpu) => {
  const plain = `<plain-table rows="${rows}"></plain-table>`;
  const put = (page, script, tag) =>
    site.put(`${page}-${name}-${count}.html`, pageOf([script, '/first.js'], tag.repeat(count)));
  const urls = [put('ours', script, tag), put('tables', '/plain-table.js', plain)];
  const [ours, tables] = await compared(site, urls, cpu);
  return {
    what: `${count} ${count === 1 ? name.slice(0, -1) : name}, CPU ${cpu} ×`,
    ours,
    beside: [{ name: `${count} × Lit table, ${rows} rows`, values: tables }],
    ...goalOf(name, count, cpu, ours),
  };
};

export const inBrowser = true;

export const measure = async (site) => {
  const rows = [];
  for (const kind of KINDS)
    for (const count of kind.counts) for (const cpu of CPU) rows.push(await rowOf(site, kind, count, cpu));
  return { rows };
};
