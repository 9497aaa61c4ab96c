import { rollup } from 'rollup';
import { unbundling } from './bundle.mjs';
import { filesIn } from './files.mjs';
import { once } from './once.mjs';
import { ROOT } from './run.mjs';

/** What runs as it is loaded, or is loaded only when a page asks for it, stays by itself. */
const ALONE = /src\/(index|loader)\.ts$|\/define\.ts$|src\/words\/(de|en-gb)\/|-file\.ts$/;

/** All sources in one script, which every test's page then asks for in place of some hundred; each module's own address still works. */
const bundled = once(async () => {
  const paths = filesIn('src').filter((path) => path.endsWith('.ts') && !path.endsWith('.bundled.ts'));
  const bundle = await rollup({
    input: Object.fromEntries(paths.map((path) => [path.replace(/\.ts$/, ''), ROOT + path])),
    external: /^[^./]/,
    treeshake: false,
    plugins: unbundling(),
    logLevel: 'silent',
  });
  const { output } = await bundle.generate({
    entryFileNames: '[name].ts',
    chunkFileNames: 'src/[name].js',
    manualChunks: (id) => (ALONE.test(id) ? undefined : 'all'),
  });
  return new Map(output.map(({ fileName, code }) => [`/${fileName}`, code]));
});

/**
 * Serves the sources to browser tests.
 * @returns {import('@web/test-runner').TestRunnerPlugin}
 */
export const bundledSources = () => ({
  name: 'bundled-sources',
  async serve({ path }) {
    if (!path.startsWith('/src/')) return undefined;
    const body = (await bundled()).get(path);
    return body && { body, type: 'js' };
  },
});
