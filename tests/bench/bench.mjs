import { cpus, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { installPackages } from '../tools/run.mjs';

/**
 * `npm run bench`: one table of ratios. Words after `--` pick sections; `--markdown` prints the table as DEVELOPERS.md has it; a word
 * that ends in `.json` is the file of published packing problems.
 */
installPackages();
const { default: buildIfStale } = await import('../tools/fresh-dist.mjs');
const { findChromium } = await import('../tools/browsers.mjs');
const { installPeers, ownVersion, PEER_NAMES, peerVersion } = await import('./peers.mjs');
const { openSite } = await import('./site.mjs');
const { asMarkdown, asText, HEAD_LINE } = await import('./table.mjs');

const SECTIONS = ['bytes', 'keystroke', 'first', 'holding', 'headless', 'plans'];
const words = process.argv.slice(2);
const isMarkdown = words.includes('--markdown');
const picked = words.filter((word) => word !== '--markdown' && !word.endsWith('.json'));
const stray = picked.filter((word) => !SECTIONS.includes(word));
if (stray.length) {
  console.error(`There is no ${stray.join(', ')} to measure. There are: ${SECTIONS.join(', ')}.`);
  process.exit(1);
}
const data =
  words.find((word) => word.endsWith('.json')) ??
  fileURLToPath(new URL('../../../shared/data/strip-packing.json', import.meta.url));

await buildIfStale();
for (const name of installPeers())
  console.error(`${name} could not be installed; what it is compared in is left out.`);

const site = findChromium() ? await openSite() : undefined;

const versions = () => {
  const own = ['lit', 'fraction.js', 'guillotine-packer', 'maxrects-packer'];
  const named = [
    ...own.map((name) => [name, ownVersion(name)]),
    ...PEER_NAMES.map((name) => [name, peerVersion(name)]),
  ];
  return [
    `Node ${process.versions.node}`,
    site ? site.version.replace('/', ' ') : 'no Chromium',
    ...named.filter(([, version]) => version).map((pair) => pair.join(' ')),
    `${cpus().length} cores, ${loadavg()[0].toFixed(1)} programs at work on them at the start`,
  ].join('; ');
};

/** A section of the table, or why there is none. */
const measured = async (name) => {
  const { inBrowser, measure, title } = await import(`./sections/${name}.mjs`);
  if (inBrowser && !site)
    return {
      title,
      rows: [],
      skipped: ['there is no Chromium or Chrome here; CHROME_PATH may say where one is'],
    };
  return { title, ...(await measure(site, { data })) };
};

const head = `${versions()}.`;
if (!isMarkdown) console.log(`${head}\n\n${HEAD_LINE}`);
const sections = [];
for (const name of SECTIONS.filter((name) => picked.length === 0 || picked.includes(name))) {
  console.error(`Measuring: ${name}`);
  const section = await measured(name);
  sections.push(section);
  if (!isMarkdown) console.log(`\n${asText(section)}`);
}
await site?.close();

if (isMarkdown) {
  const { format, resolveConfig } = await import('prettier');
  const options = await resolveConfig(fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url)));
  console.log(await format(`${asMarkdown(sections)}\n\n${head}`, { ...options, parser: 'markdown' }));
}
