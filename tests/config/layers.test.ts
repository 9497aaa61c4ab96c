import { ESLint } from 'eslint';
import { describe, expect, it } from 'vitest';
import { importFault } from './layers.mjs';
import { ROOT } from '../tools/run.mjs';

describe('imports run downwards', () => {
  it.each([
    ['src/elements/backing/backing.ts', '../../face/sheet.js'],
    ['src/elements/worksheet/worksheet.ts', '../backing/backing.js'],
    ['src/elements/backing/backing.ts', '../../measure/exact.js'],
    ['src/drawing/backing.ts', '../reckon/backing.js'],
    ['src/drawing/backing.ts', 'lit'],
    ['src/trade/beds.ts', '../measure/exact.js'],
    ['src/measure/parse.ts', './exact.js'],
    ['src/measure/exact.ts', 'fraction.js'],
    ['src/index.ts', './elements/backing/define.js'],
    ['src/reckon.ts', './reckon/backing.js'],
  ])('%s may import %s', (file, specifier) => {
    expect(importFault(file, specifier)).toBeUndefined();
  });

  it.each([
    ['src/measure/exact.ts', '../trade/beds.js', 'above'],
    ['src/trade/beds.ts', '../planner/strips.js', 'above'],
    ['src/planner/strips.ts', '../reckon/backing.js', 'above'],
    ['src/reckon/backing.ts', '../drawing/backing.js', 'above'],
    ['src/drawing/backing.ts', '../face/sheet.js', 'above'],
    ['src/face/rows/row.ts', '../../elements/backing/backing.js', 'above'],
    ['src/measure/exact.ts', '../index.js', 'entry point'],
    ['src/face/sheet.ts', '../reckon.js', 'entry point'],
    ['src/reckon/backing.ts', 'lit', 'without a page'],
    ['src/measure/exact.ts', '@lit/context', 'without a page'],
    ['src/face/sheet.ts', '../../tests/pages/site.js', 'outside'],
  ])('%s may not import %s', (file, specifier, reason) => {
    expect(importFault(file, specifier)).toContain(reason);
  });

  it('is what the linter enforces, however the import is written', async () => {
    const eslint = new ESLint({ cwd: ROOT, overrideConfigFile: 'tests/config/eslint.config.mjs' });
    const [result] = await eslint.lintText(
      [
        `import '../trade/beds.js';`,
        `export * from '../reckon/backing.js';`,
        `export { QuiltBacking } from '../elements/backing/backing.js';`,
        `export const later = () => import('../face/sheet.js');`,
        `export type Bed = import('../trade/beds.js').Bed;`,
        `import './units.js';`,
      ].join('\n'),
      { filePath: `${ROOT}src/measure/exact.ts` },
    );
    const lines = result?.messages
      .filter(({ ruleId }) => ruleId === 'quilt/imports-run-downwards')
      .map(({ line }) => line);
    expect(lines).toEqual([1, 2, 3, 4, 5]);
  }, 60_000);
});
