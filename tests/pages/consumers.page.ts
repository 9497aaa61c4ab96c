import { readdirSync } from 'node:fs';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { rollup } from 'rollup';
import { beforeAll, describe, expect, it } from 'vitest';
import { inline } from '../tools/bundle.mjs';
import { consumers } from '../tools/consumer.mjs';
import { ROOT } from '../tools/run.mjs';

describe('what a bundler keeps of the packed package', () => {
  let folder: string;
  beforeAll(async () => {
    folder = await consumers()('html');
  });

  /** The modules of which something is left in a bundle of this code, by their paths in node_modules. */
  const kept = async (code: string): Promise<string[]> => {
    const bundle = await rollup({
      input: `${folder}/entry.js`,
      plugins: [inline(`${folder}/entry.js`, code), nodeResolve({ preserveSymlinks: true } as object)],
      logLevel: 'silent',
    });
    const { output } = await bundle.generate({ inlineDynamicImports: true });
    return Object.entries(output[0].modules)
      .filter(([id, { renderedLength }]) => id.includes('node_modules') && renderedLength > 0)
      .map(([id]) => id.replaceAll('\\', '/').replace(/.*node_modules\//, ''));
  };
  const others = (paths: string[], own: string): string[] =>
    paths.filter(
      (path) => /\/elements\/(\w+)\/(?:\1|define)\.js$/.test(path) && !path.includes(`/elements/${own}/`),
    );

  it('of one reckoner: no Lit, no face, no tables of other calculators', async () => {
    const paths = await kept(
      "import { reckonBacking } from 'quilt-reckoner/reckon'; console.log(reckonBacking);",
    );
    expect(paths).toContain('quilt-reckoner/dist/modules/calculators/backing/reckon.js');
    expect(paths.filter((path) => /^(?:lit|@lit)/.test(path))).toEqual([]);
    expect(paths.filter((path) => /batting|beds|face\/|elements/.test(path))).toEqual([]);
  });

  it.each(readdirSync(`${ROOT}src/elements`))('of quilt-%s: no other element', async (name) => {
    const paths = await kept(`import 'quilt-reckoner/${name}';`);
    expect(paths).toContain(`quilt-reckoner/dist/modules/elements/${name}/define.js`);
    expect(others(paths, name)).toEqual([]);
  });

  it('of one class picked from all, or from its own entry', async () => {
    const own = await kept("import { QuiltTop } from 'quilt-reckoner/top/class'; console.log(QuiltTop);");
    expect(own).toContain('quilt-reckoner/dist/modules/elements/top/top.js');
    expect(own.filter((path) => path.endsWith('/define.js'))).toEqual([]);
    expect(others(own, 'top')).toEqual([]);
  });

  it('of types alone, or of a name that is not used: nothing', async () => {
    expect(await kept("import 'quilt-reckoner/react'; import 'quilt-reckoner/reckon';")).toEqual([]);
    expect(await kept("import { QuiltTop } from 'quilt-reckoner/top/class';")).toEqual([]);
  });
});
