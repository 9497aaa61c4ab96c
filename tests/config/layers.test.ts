import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { importFault, LAYERS } from './layers.mjs';
import { ROOT } from '../tools/run.mjs';
import { SETUP_LIMIT } from './limits.mjs';
import { projectLinter } from './linter.js';

describe('imports run downwards', () => {
  it.each([
    ['src/elements/backing/backing.ts', '../../face/reckoned.js'],
    ['src/elements/worksheet/worksheet.ts', '../backing/backing.js'],
    ['src/elements/backing/backing.ts', '../../measure/exact.js'],
    ['src/face/drawing.ts', '../ledger/picture.js'],
    ['src/face/drawing.ts', '../words/teller.js'],
    ['src/face/drawing.ts', 'lit'],
    ['src/words/en/backing.ts', '../../calculators/backing/shape.js'],
    ['src/words/en/worksheet.ts', '../../workbook/shape.js'],
    ['src/workbook/flow.ts', '../calculators/calculator.js'],
    ['src/calculators/backing/reckon.ts', '../../ledger/ledger.js'],
    ['src/calculators/backing/reckon.ts', './shape.js'],
    ['src/ledger/strips.ts', '../planner/plan.js'],
    ['src/trade/beds.ts', '../measure/exact.js'],
    ['src/measure/parse.ts', './exact.js'],
    ['src/measure/exact.ts', 'fraction.js'],
    ['src/index.ts', './elements/backing/define.js'],
    ['src/reckon.ts', './calculators/backing/backing.js'],
  ])('%s may import %s', (file, specifier) => {
    expect(importFault(file, specifier)).toBeUndefined();
  });

  it.each([
    ['src/measure/exact.ts', '../trade/beds.js', 'above'],
    ['src/trade/beds.ts', '../planner/plan.js', 'above'],
    ['src/planner/plan.ts', '../ledger/strips.js', 'above'],
    ['src/ledger/strips.ts', '../calculators/backing/backing.js', 'above'],
    ['src/calculators/backing/draw.ts', '../../workbook/shape.js', 'above'],
    ['src/calculators/backing/draw.ts', '../../words/teller.js', 'above'],
    ['src/workbook/sayings.ts', '../words/en/worksheet.js', 'above'],
    ['src/words/told.ts', '../face/face.js', 'above'],
    ['src/face/row.ts', '../elements/backing/backing.js', 'above'],
    ['src/measure/exact.ts', '../index.js', 'entry point'],
    ['src/face/face.ts', '../reckon.js', 'entry point'],
    ['src/calculators/backing/draw.ts', 'lit', 'without a page'],
    ['src/words/teller.ts', 'lit', 'without a page'],
    ['src/measure/exact.ts', '@lit/context', 'without a page'],
    ['src/face/face.ts', '../../tests/pages/site.js', 'outside'],
  ])('%s may not import %s', (file, specifier, reason) => {
    expect(importFault(file, specifier)).toContain(reason);
  });

  it('every folder of src/ is in its place', () => {
    const folders = readdirSync(`${ROOT}src`, { withFileTypes: true }).filter((one) => one.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual([...LAYERS].sort());
  });

  it(
    'is what the linter enforces, however the import is written',
    async () => {
      const [result] = await projectLinter().lintText(
        [
          `import '../trade/beds.js';`,
          `export * from '../calculators/backing/backing.js';`,
          `export { QuiltBacking } from '../elements/backing/backing.js';`,
          `export const later = () => import('../face/face.js');`,
          `export type Bed = import('../trade/beds.js').Bed;`,
          `import './units.js';`,
        ].join('\n'),
        { filePath: `${ROOT}src/measure/exact.ts` },
      );
      const lines = result?.messages
        .filter(({ ruleId }) => ruleId === 'quilt/imports-run-downwards')
        .map(({ line }) => line);
      expect(lines).toEqual([1, 2, 3, 4, 5]);
    },
    SETUP_LIMIT,
  );
});
