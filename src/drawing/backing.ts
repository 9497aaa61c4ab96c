import type { Style } from '../measure/format.js';
import type { BackingResult } from '../reckon/backing.js';
import { inchesIn, inchesOf, lengthOf, type Box, type Line, type Picture } from './picture.js';

/** The back from behind: its panels and seams, and the quilt within its overage. */
export const drawBacking = (result: BackingResult, style: Style): Picture => {
  const layout = result.layouts[0]!;
  const across = layout.direction === 'lengthwise';
  const width = inchesOf(result.need.width);
  const height = inchesOf(result.need.length);
  const reach = across ? width : height;
  const seam = inchesIn(result, 'seam');
  const cloth = inchesIn(result, 'washedWidth') || inchesIn(result, 'fabricWidth');

  /** Where each panel shows once joined: its seam allowances are turned under. */
  const bands: { from: number; to: number; label: string }[] = [];
  const count = layout.panels;
  for (let panel = 0, at = 0; panel < count; panel += 1) {
    const shown = cloth - (panel > 0 ? seam : 0) - (panel < count - 1 || layout.strip ? seam : 0);
    bands.push({ from: at, to: Math.min(at + shown, reach), label: `panel ${panel + 1}` });
    at += shown;
  }
  if (layout.strip) bands.push({ from: bands.at(-1)!.to, to: reach, label: 'strip' });

  const boxes: Box[] = bands.map(({ from, to, label }) =>
    across
      ? { x: from, y: 0, width: to - from, height, is: 'cloth', label }
      : { x: 0, y: from, width, height: to - from, is: 'cloth', label },
  );
  const lines: Line[] = bands.slice(1).map(({ from }) =>
    across ? { is: 'seam', from: [from, 0], to: [from, height] } : { is: 'seam', from: [0, from], to: [width, from] },
  );
  if (layout.strip) {
    const strip = bands.at(-1)!;
    const along = across ? height : width;
    for (let piece = 1; piece < layout.strip.count; piece += 1) {
      const at = Math.min(along, piece * (cloth - 2 * seam) + seam);
      lines.push(
        across ? { is: 'seam', from: [strip.from, at], to: [strip.to, at] } : { is: 'seam', from: [at, strip.from], to: [at, strip.to] },
      );
    }
  }
  const quiltWidth = inchesIn(result, 'width');
  const quiltHeight = inchesIn(result, 'length');
  boxes.push({ x: (width - quiltWidth) / 2, y: (height - quiltHeight) / 2, width: quiltWidth, height: quiltHeight, is: 'quilt' });
  return {
    title: `The back, ${lengthOf(result.need.width, style)} by ${lengthOf(result.need.length, style)}: ${result.summary} The broken line is the quilt.`,
    width,
    height,
    boxes,
    lines,
    dimensions: [
      { side: 'top', from: 0, to: width, text: lengthOf(result.need.width, style) },
      { side: 'left', from: 0, to: height, text: lengthOf(result.need.length, style) },
      { side: 'bottom', from: (width - quiltWidth) / 2, to: (width + quiltWidth) / 2, text: `quilt ${lengthOf(result.working[0]!.inches!, style)}` },
      { side: 'right', from: (height - quiltHeight) / 2, to: (height + quiltHeight) / 2, text: `quilt ${lengthOf(result.working[1]!.inches!, style)}` },
    ],
  };
};
