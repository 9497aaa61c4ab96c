import type { Style } from '../measure/format.js';
import type { BattingResult } from '../reckon/batting.js';
import { inchesOf, lengthOf, type Box, type Dimension, type Line, type Picture } from './picture.js';

/** The batting needed on what is bought, with what is left over. */
export const drawBatting = (result: BattingResult, style: Style): Picture => {
  const need = { width: inchesOf(result.need.width), height: inchesOf(result.need.length) };
  const quilt = { width: inchesOf(result.quilt.width), height: inchesOf(result.quilt.length) };
  const roll = result.rolls[0];
  const pack = result.buy.unit === 'package' ? result.packages.find(({ fits }) => fits) : undefined;
  let [width, height] = [need.width, need.height];
  const lines: Line[] = [];
  if (pack) {
    const [a, b] = [inchesOf(pack.width), inchesOf(pack.length)];
    const upright = a >= need.width && b >= need.height;
    [width, height] = upright ? [a, b] : [b, a];
  } else if (roll) {
    const bought = inchesOf(roll.buy.inches) / roll.lengths;
    const across = inchesOf(roll.width) * roll.lengths;
    const lengthwise = roll.direction === 'lengthwise';
    [width, height] = lengthwise ? [across, bought] : [bought, across];
    for (let seam = 1; seam < roll.lengths; seam += 1) {
      const at = seam * inchesOf(roll.width);
      lines.push(lengthwise ? { is: 'seam', from: [at, 0], to: [at, height] } : { is: 'seam', from: [0, at], to: [width, at] });
    }
  }
  const boxes: Box[] = [
    { x: 0, y: 0, width, height, is: 'spare' },
    { x: 0, y: 0, ...need, is: 'cloth' },
    { x: (need.width - quilt.width) / 2, y: (need.height - quilt.height) / 2, ...quilt, is: 'quilt', label: 'quilt' },
  ];
  const dimensions: Dimension[] = [
    { side: 'top', from: 0, to: need.width, text: lengthOf(result.need.width, style) },
    { side: 'left', from: 0, to: need.height, text: lengthOf(result.need.length, style) },
  ];
  const [boughtWide, boughtHigh] = [width, height].map((side) => lengthOf(String(Math.round(side * 1e6) / 1e6), style));
  if (width > need.width) dimensions.push({ side: 'bottom', from: 0, to: width, text: `bought ${boughtWide!}` });
  if (height > need.height) dimensions.push({ side: 'right', from: 0, to: height, text: `bought ${boughtHigh!}` });
  return { title: `${result.summary} The broken line is the quilt; what lies outside the tinted batting is left over.`, width, height, boxes, lines, dimensions };
};
