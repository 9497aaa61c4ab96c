import type { Calculator, LooseCut, Take } from '../calculator.js';
import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { bordersFields, say, type BordersAnswer, type CutBorder } from './shape.js';

/** Borders round a quilt top: cut lengths, strips, cloth, and the finished size. */
export const borders: Calculator<BordersAnswer> = {
  name: 'borders',
  fields: bordersFields,
  reckon,
  draw,
  lists,
  finishes: ({ finished }) => finished,
  takes: ({ used }, letters) =>
    used.borders.map((made, at) => takeOf(made, letters[at] ?? letters.at(-1) ?? '')),
};

const takeOf = ({ number, border, cuts }: CutBorder, fabric: string): Take => ({
  ...border.cloth,
  title: say('borderNumber', { number }),
  fabric,
  need: border.fabric,
  cuts,
  pieces: looseOf(border, cuts),
});

/** What may be planned with other parts: the border's strips, or its pieces along the cloth. None if its strips have two widths. */
const looseOf = ({ plan, strips, cloth }: CutBorder['border'], cuts: CutBorder['cuts']): LooseCut[] => {
  if (plan === 'along') return cuts.map((cut) => ({ ...cut, turn: false }));
  const [first, ...more] = cuts;
  if (!first || !more.every(({ width }) => width.equals(first.width))) return [];
  return [{ width: cloth.width, length: first.width, count: strips, turn: false }];
};
