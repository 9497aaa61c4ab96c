import { bordersFields } from '../../src/calculators/borders/shape.js';
import { readField } from '../../src/ledger/field.js';
import type { Size } from '../../src/ledger/quilt.js';
import { unlessRefused } from '../../src/ledger/refusal.js';
import { sum, type Exact } from '../../src/measure/exact.js';
import { mixed } from '../../src/measure/format.js';
import { batting, borders, parts, top, worksheet, type PartName } from './parts.js';
import { asked, cell, own, units, way, type Asked } from './question.js';

/** A length as an attribute, whatever the units. */
const inches = (length: Exact): string => `${mixed(length)} in`;

/** How wide all borders of one side are together. Undefined if somebody wrote no widths, or wrong ones. */
const bordersWide = (): Exact | undefined =>
  unlessRefused(
    () => readField(bordersFields.borders, borders.borders, borders.lengthStyle, 'borders'),
    () => undefined,
  )?.reduce((all, one) => all.add(one), sum([]));

/** The top that these borders leave inside a quilt. */
const within = ({ width, length }: Size, wide: Exact): Size => ({
  width: width.sub(wide.mul(2)),
  length: length.sub(wide.mul(2)),
});

/** Whether the borders lie inside the size that was asked for. If not, they go round the top. */
export const isInside = (): boolean => borders.isConnected && (way() === 'finished' || way() === 'bed');

/** What the question came to last, with what the borders make of it. */
export interface Shared extends Asked {
  /** The top inside the borders, where the size is that of the finished quilt. */
  inside: Size | undefined;
}

/**
 * Gives the parts what the cells of the question say, the size left out. Only after those cells changed: a part has cells for the
 * same, and what is typed there comes back to the question a moment later.
 */
export const give = (): void => {
  worksheet.units = units();
  worksheet.fabricWidth = own('fabric-width');
  worksheet.increment = own('increment');
  for (const name of ['block', 'across', 'down'] as const) top[name] = cell(name).value;
};

/**
 * Gives the size to the parts. It goes in where the quilt begins: at the blocks, at the top, or at the finished quilt. From there on
 * it flows. If there is no size, none flows, because any other could be too small.
 */
export const share = (): Shared => {
  const { size, problems } = asked();
  const wide = isInside() ? bordersWide() : undefined;
  const inside = size && wide && within(size, wide);
  const isTooWide = inside && (inside.width.lte(0) || inside.length.lte(0));
  if (isTooWide)
    problems.push({
      name: '',
      message: 'The borders leave no room for a top inside this size.',
      isBegun: false,
    });
  const whole = isInside() ? undefined : size;
  const left = isTooWide ? undefined : inside;
  for (const side of ['width', 'length'] as const) {
    worksheet[side] = whole && inches(whole[side]);
    borders[side] = left && inches(left[side]);
  }
  for (const { name, element } of parts) element.lock = lockOf(name);
  return { size, problems, inside: left };
};

/**
 * What a part may not change: the size is that of the question. A link from before may have a bed for the batting alone, and then
 * it can be changed.
 */
const lockOf = (name: PartName): string | undefined => {
  if (name === 'top' || name === 'cutting') return undefined;
  if (name === 'borders' && isInside()) return 'width length target';
  const isForBed = batting.bed && batting.bed !== 'none';
  return name === 'batting' && !isForBed ? 'width length bed drop tuck' : 'width length';
};

/** The quilt's size with everything on it. Undefined while something in it is wrong. */
export const finishedSize = ({ size }: Asked): Size | undefined =>
  borders.isConnected ? borders.answer?.finished : way() === 'blocks' ? top.answer?.finished : size;
