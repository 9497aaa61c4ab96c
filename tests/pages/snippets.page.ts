import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isOfPage, snippetsIn } from '../hosts/snippets.js';
import { ROOT } from '../tools/run.mjs';

const snippets = ['README.md', 'DEVELOPERS.md'].flatMap((file) =>
  snippetsIn(file, readFileSync(ROOT + file, 'utf8')),
);
const ofNode = snippets.filter(({ language, code }) => language === 'js' && !isOfPage(code));

describe('the snippets of the documents', () => {
  it('are of a kind that is run here, in the pages of browsers, or by the sample consumers', () => {
    expect(ofNode.length).toBeGreaterThan(0);
    const known = ['html', 'css', 'js', 'jsx', 'tsx', 'vue', 'ts', 'sh', 'json', 'njk', 'text'];
    expect(snippets.filter(({ language }) => !known.includes(language))).toEqual([]);
  });

  it.each(ofNode.map(({ at, code }) => [at, code] as const))(
    '%s: runs in Node, and each line gives what its remark says',
    (_, code) => {
      const folder = mkdtempSync(join(tmpdir(), 'quilt-reckoner-snippet-'));
      try {
        // The folder is like a real installation: this project under its own name, and the other imports.
        const names = Array.from(code.matchAll(/from '((?:@[\w-]+\/)?[\w-]+)/g), ([, name]) => name!);
        for (const name of new Set(names)) {
          const link = join(folder, 'node_modules', name);
          mkdirSync(dirname(link), { recursive: true });
          symlinkSync(name === 'quilt-reckoner' ? ROOT : `${ROOT}node_modules/${name}`, link);
        }
        const checked = code.replace(
          /^(.+); \/\/ ("[^"]*"|\d+|true)$/gm,
          (_line, expression: string, value: string) =>
            `if (${expression} !== ${value}) throw new Error(String(${expression}));\nconsole.log('checked');`,
        );
        writeFileSync(join(folder, 'snippet.mjs'), checked);
        const said = execFileSync(process.execPath, [join(folder, 'snippet.mjs')], { encoding: 'utf8' });
        expect(said.match(/checked/g)?.length ?? 0).toBe(
          code.match(/^.+; \/\/ ("[^"]*"|\d+|true)$/gm)?.length ?? 0,
        );
        if (/reckon\w+\(/.test(code)) expect(said).toContain('checked');
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
  );
});
