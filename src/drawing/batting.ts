import { exact } from '../measure/exact.js';
import { mixed, type Style } from '../measure/format.js';
import type { BattingResult } from '../reckon/batting.js';
import type { Size } from '../reckon/shared.js';
import { inchesOf, type Line, type Picture } from './picture.js';
import { corner, inner, sidesOf, turning } from './sides.js';

/** What is bought, lying as the batting is cut from it, and the seams where lengths are butted. */
const boughtFor = ({ buy, need, packages, rolls }: BattingResult): { bought: Size; seams: Line[] } => {
  if (buy.unit === 'package') {
    const { width, length } = packages[0]!;
    const upright = exact(width).gte(exact(need.width)) && exact(length).gte(exact(need.length));
    return { bought: upright ? { width, length } : { width: length, length: width }, seams: [] };
  }
  const roll = rolls[0]!;
  const at = turning(roll.direction === 'crosswise');
  const across = mixed(exact(roll.width).mul(roll.lengths));
  const along = mixed(exact(roll.buy.inches).div(roll.lengths));
  const seams = Array.from({ length: roll.seams }, (_, seam): Line => {
    const edge = (seam + 1) * inchesOf(roll.width);
    return { is: 'seam', from: at(edge, 0), to: at(edge, inchesOf(along)) };
  });
  const [width, length] = roll.direction === 'lengthwise' ? [across, along] : [along, across];
  return { bought: { width, length }, seams };
};

/** The batting needed on what is bought, with what is left over. */
export const drawBatting = (result: BattingResult, style: Style): Picture => {
  const { bought, seams } = boughtFor(result);
  const [all, need, quilt] = [sidesOf(bought), sidesOf(result.need), sidesOf(result.quilt)];
  return {
    title: `${result.summary} The broken line is the quilt; what lies outside the tinted batting is left over.`,
    ...all,
    boxes: [
      { x: 0, y: 0, ...all, is: 'spare' },
      { x: 0, y: 0, ...need, is: 'cloth' },
      {
        x: (need.width - quilt.width) / 2,
        y: (need.height - quilt.height) / 2,
        ...quilt,
        is: 'quilt',
        label: 'quilt',
      },
    ],
    lines: seams,
    dimensions: [...corner(result.need, style), ...inner(0, 0, bought, style, 'bought')],
  };
};
