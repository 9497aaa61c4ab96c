import buildIfStale from '../tools/fresh-dist.mjs';
import { weights } from '../tools/weigh.mjs';

const kB = (bytes) => (bytes === undefined ? '' : `${(bytes / 1000).toFixed(1)} kB`).padStart(9);

buildIfStale();
console.log(`${'gzipped'.padEnd(48)}${'bundled'.padStart(9)}${'served'.padStart(9)}${'limit'.padStart(9)}`);
for (const { name, bundled, served, limit } of await weights()) {
  const over = limit && Math.max(bundled ?? 0, served ?? 0) > limit;
  console.log(`${name.padEnd(48)}${kB(bundled)}${kB(served)}${kB(limit)}${over ? '  over' : ''}`);
}
