import { ALONE, SEW_ALONG, WORKSHEET } from '../elements.mjs';
import { isThere } from '../peers.mjs';
import { pageOf } from '../site.mjs';
import { atMost, median } from '../table.mjs';

export const title =
  'A keystroke, ms of the page’s thread, until all that changes on the screen is drawn and laid out: the slowest cell of each calculator, alone, in a worksheet of seven parts, and in the sew-along of the demo';

const SHEET = 'jspreadsheet, 40 formulas';
const FEW = 3;
const MANY = 15;
const WARM = 2;

const JSPREADSHEET = [
  '/node_modules/jsuites/dist/jsuites.js',
  '/node_modules/@jspreadsheet/formula/dist/index.js',
  '/node_modules/jspreadsheet-ce/dist/index.js',
  '/side-jspreadsheet.js',
];

/** All beside each other in one page, so that each is in sight. */
const framesOf = (sources) => {
  const widths = [900, 330, 330];
  return sources
    .map(
      (source, at) =>
        `<iframe src="${source}" width="${widths[at]}" height="860" style="border: 0"></iframe>`,
    )
    .join('');
};

/** Opens that markup beside a plain table of as many rows, and jspreadsheet where it is there. */
const opened = async (site, name, markup) => {
  const tab = await site.tab();
  const ours = pageOf(['/dist/quilt-reckoner.js', '/side-ours.js'], markup);
  await tab.goto(site.put(`ours-${name}.html`, ours));
  await tab.waitForFunction('window.side');
  const rows = await tab.evaluate('side.rows');
  site.put('table.html', pageOf(['/side-table.js']));
  site.put('jspreadsheet.html', pageOf(JSPREADSHEET));
  const others = isThere('jspreadsheet-ce') ? ['/jspreadsheet.html'] : [];
  const sources = [`/ours-${name}.html`, `/table.html?rows=${rows}`, ...others];
  await tab.goto(site.put(`beside-${name}.html`, pageOf(['/host.js'], framesOf(sources))));
  await tab.waitForFunction('window.sides');
  const cells = await tab.evaluate('sides().then(([ours]) => ours.cells)');
  const client = await tab.createCDPSession();
  await client.send('Performance.enable');
  return { tab, client, rows, cells, sides: sources.length };
};

/** Milliseconds of the page's own thread since the page began, which other programs on the machine do not stretch. */
const threadTime = async (client) => {
  const { metrics } = await client.send('Performance.getMetrics');
  return 1000 * metrics.find(({ name }) => name === 'ThreadTime').value;
};

/** Asks a side for something; what it says, and the thread's time for it. */
const asked = async ({ tab, client }, which, words) => {
  const start = await threadTime(client);
  const said = await tab.evaluate(`sides().then((sides) => sides[${which}]${words})`);
  return { said, time: (await threadTime(client)) - start };
};

/** One keystroke, without what it costs to ask for one; undefined where the value was no good. */
const struck = async (page, which, cell, at) => {
  await page.tab.evaluate('still()');
  const { time: asking } = await asked(page, which, '.rows');
  const { time } = await asked(page, which, `.stroke(${JSON.stringify(cell)}, ${at})`);
  const { said: isGood = true, time: later } = await asked(page, which, '.finish?.()');
  return isGood ? { drawn: Math.max(0.01, time - asking), whole: time + later - 2 * asking } : undefined;
};

/** The medians of a cell, ours and the others'; they take turns, and the first strokes of each count for nothing. */
const compared = async (page, cell, strokes) => {
  const times = Array.from({ length: page.sides }, () => []);
  const word = JSON.stringify(cell);
  await asked(page, 0, `.enter(${word})`);
  for (let at = 0; at < strokes + WARM; at += 1)
    for (const [which, taken] of times.entries()) {
      const time = await struck(page, which, cell, at);
      if (time && at >= WARM) taken.push(time);
    }
  await asked(page, 0, `.leave(${word})`);
  if (times[0].length < strokes / 2) return undefined;
  const [ours, table, sheet] = times.map((taken) => median(taken.map(({ drawn }) => drawn)));
  return { cell, ours, table, sheet, whole: median(times[0].map(({ whole }) => whole)) };
};

/** The sheet that a cell is in: `top 2: block` is in `top 2`. */
const sheetOf = (cell) => cell.split(':')[0];

/** The cell of each sheet that takes longest: found with a few strokes, measured with many. */
const slowest = async (site, name, markup) => {
  const page = await opened(site, name, markup);
  const found = new Map();
  for (const cell of page.cells) {
    const times = await compared(page, cell, FEW);
    // A cell in which no other number is any good has no time.
    if (times && !(found.get(sheetOf(cell))?.ours >= times.ours)) found.set(sheetOf(cell), times);
  }
  const all = [];
  for (const few of found.values())
    all.push({ rows: page.rows, ...((await compared(page, few.cell, MANY)) ?? few) });
  await page.tab.close();
  return all;
};

/** What is off the screen is drawn later, and a plan is made in the background: another wait, and so another row. */
const isLater = ({ ours, whole }) => whole > 1.5 * ours + 20;

const rowsOf = (place, limit) => (times) => {
  const { cell, ours, table, sheet, whole, rows } = times;
  const what = `${place}, ${cell}`;
  const beside = [
    ...(sheet ? [{ name: SHEET, values: [sheet] }] : []),
    { name: `Lit table, ${rows} rows`, values: [table] },
  ];
  const goal = sheet && limit ? { goal: atMost(`≤ ${limit} × jspreadsheet`, ours / sheet, limit) } : {};
  return [
    { what, ours: [ours], beside, ...goal },
    ...(isLater(times)
      ? [{ what: `${what}, until all is planned, and drawn off the screen too`, ours: [whole] }]
      : []),
  ];
};

export const measure = async (site) => {
  const rows = [];
  for (const [name, markup] of Object.entries(ALONE)) {
    const limit = ['borders', 'top'].includes(name) ? 2 : undefined;
    rows.push(...(await slowest(site, name, markup)).flatMap(rowsOf('alone', limit)));
  }
  rows.push(...(await slowest(site, 'worksheet', WORKSHEET)).flatMap(rowsOf('in a worksheet', 4)));
  rows.push(...(await slowest(site, 'sew-along', SEW_ALONG)).flatMap(rowsOf('in the sew-along', 4)));
  return { rows, skipped: isThere('jspreadsheet-ce') ? [] : ['jspreadsheet-ce, which is not installed'] };
};

export const inBrowser = true;
