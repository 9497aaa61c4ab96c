import { expect } from 'chai';
import type { QuiltWorksheet } from '../../../src/index.js';
import type { WorksheetResult } from '../../../src/reckon.js';
import type { Cells } from '../../../src/face/export.js';
import { answered, settled, show, type Sheet } from '../../face/fixture.js';

export type Worksheet = QuiltWorksheet & Sheet;

/** The parts of one quilt, each as its author writes it. */
export const PARTS = {
  top: '<quilt-top block="12" across="4" down="5" sashing="2" cornerstones frame fabric="B C"></quilt-top>',
  borders: '<quilt-borders borders="2, 5" fabric="C D"></quilt-borders>',
  backing: '<quilt-backing fabric="E"></quilt-backing>',
  binding: '<quilt-binding fabric="C"></quilt-binding>',
  batting: '<quilt-batting packages="small 60 x 60 @ 18; large 90 x 108 @ 38.50"></quilt-batting>',
  cutting: '<quilt-cutting sheet="fat-quarter" price="3.60" list="A | square | 6 1/2 | 12"></quilt-cutting>',
} as const;
export const FABRICS = [
  '<quilt-fabric letter="A" name="Wet Sand" price="13.50" swatch="#d9c7a3"></quilt-fabric>',
  '<quilt-fabric letter="B" name="Gull Grey" price="12.00"></quilt-fabric>',
  '<quilt-fabric letter="C" name="Slate Roof" price="14.25"></quilt-fabric>',
  '<quilt-fabric letter="D" name="Harbour" price="13.50"></quilt-fabric>',
  '<quilt-fabric letter="E" name="Long Horizon" price="19.80" fabric-width="106"></quilt-fabric>',
];

/** Once nothing in the worksheet changes any more, and every plan is made and shown. */
export const calm = async (worksheet: Sheet): Promise<void> => {
  for (let before = ''; ;) {
    await settled(worksheet.parentElement ?? worksheet);
    const sheets = [worksheet, ...worksheet.querySelectorAll<Sheet>('*')].filter((at) => 'result' in at);
    const now = JSON.stringify(sheets.map(({ result }) => result));
    if (now === before) return;
    before = now;
    await new Promise((done) => setTimeout(done));
  }
};

export const worksheet = async (inside: string, attributes = ''): Promise<Worksheet> => {
  const made = await show<Worksheet>(`<quilt-worksheet ${attributes}>${inside}</quilt-worksheet>`);
  await calm(made);
  return made;
};
/** The whole quilt, with other attributes or parts where a test wants them. */
export const quilt = (
  attributes = 'currency="EUR"',
  parts: Partial<Record<keyof typeof PARTS, string>> = {},
): Promise<Worksheet> =>
  worksheet([...FABRICS, ...Object.values({ ...PARTS, ...parts })].join('\n'), attributes);

export const part = (within: ParentNode, name: keyof typeof PARTS | 'fabric'): Sheet =>
  within.querySelector<Sheet>(`quilt-${name}`) ?? expect.fail(`There is no ${name}`);
export const list = (sheet: Sheet): WorksheetResult => answered<WorksheetResult>(sheet);
export const needs = (sheet: Sheet): Record<string, string> =>
  Object.fromEntries(list(sheet).fabrics.map(({ letter, need, parts }) => [letter || parts[0]!.title, need]));
/** What is copied and downloaded. */
export const cellsOf = (sheet: Sheet): Cells => {
  const { good } = sheet as unknown as { good: unknown };
  return (sheet as unknown as { cells(good: unknown): Cells }).cells(good);
};
