import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { rollup } from 'rollup';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bundling, standalonePage } from './bundle.mjs';

let folder: string;
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'quilt-page-'))));
afterAll(() => rmSync(folder, { recursive: true }));

const page = async (script: string): Promise<string> => {
  writeFileSync(join(folder, 'style.css'), 'p { color: red; } /* $& */');
  writeFileSync(join(folder, 'part.ts'), script);
  writeFileSync(
    join(folder, 'trial.html'),
    `<!doctype html><html><head><link rel="stylesheet" href="./style.css" />
<script type="module" src="./part.ts"></script></head><body><p>Hello</p></body></html>`,
  );
  const bundle = await rollup({
    input: { trial: join(folder, 'trial.html') },
    plugins: [standalonePage(), ...bundling()],
  });
  const { output } = await bundle.generate({});
  expect(output.map(({ fileName }) => fileName)).toEqual(['trial.html']);
  const [file] = output as unknown as { source: string }[];
  return file!.source;
};

it('puts script and style inside the page', async () => {
  const html = await page('const greeting: string = "hi"; document.title = greeting;');
  expect(html).toContain('<style>p{color:red}</style>');
  expect(html).toContain('document.title="hi"');
  expect(html).not.toMatch(/src=|href=|\.ts|\.css/);
});

it('lets nothing in the code end the script early', async () => {
  const html = await page('document.title = "</script><script><!-- $& $1" + `${location.href}</SCRIPT >`;');
  const [, code = ''] = /<script type="module">([^]*?)<\/script>\n<\/body>/.exec(html) ?? [];
  expect(code).not.toMatch(/<\/script|<script|<!--/i);
  const document = { title: '' };
  runInNewContext(code, { document, location: { href: 'x' } });
  expect(document.title).toBe('</script><script><!-- $& $1x</SCRIPT >');
});
