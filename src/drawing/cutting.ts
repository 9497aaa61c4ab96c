import { exact } from '../measure/exact.js';
import { number, type Style } from '../measure/format.js';
import type { CuttingResult, FabricPlan } from '../reckon/cutting.js';
import { inchesOf, lengthOf, type Box, type Dimension, type Line, type Picture } from './picture.js';
import { corner } from './sides.js';

/** Sheets drawn of one fabric; sheets cut alike are drawn once. */
const MOST_SHEETS = 8;

const LOOKS = ['piece', 'cloth', 'other'] as const;

const sheetsOf = ({ layout }: FabricPlan): FabricPlan['layout'][] => {
  const sheets: FabricPlan['layout'][] = [];
  for (const piece of layout) (sheets[piece.sheet] ??= []).push(piece);
  return sheets;
};

const shapeOf = (pieces: FabricPlan['layout']): string =>
  pieces.map(({ x, y, width, height, piece }) => [x, y, width, height, piece].join()).join(';');

/** Each fabric's cloth to scale with its pieces; of sheets cut alike, one with their number. */
export const drawCutting = (result: Pick<CuttingResult, 'fabrics'>, style: Style): Picture[] =>
  result.fabrics.flatMap((plan) => {
    const width = inchesOf(plan.width);
    const height = inchesOf(plan.height);
    const kinds = [...new Set(plan.layout.map(({ piece }) => piece))];
    const shown = new Map<string, string>();
    const inFew = (side: string): string => {
      if (!shown.has(side)) shown.set(side, number(exact(side), style));
      return shown.get(side)!;
    };
    const alike = new Map<string, FabricPlan['layout'][]>();
    for (const sheet of sheetsOf(plan))
      alike.set(shapeOf(sheet), [...(alike.get(shapeOf(sheet)) ?? []), sheet]);
    return [...alike.values()].slice(0, MOST_SHEETS).map((sheets): Picture => {
      const boxes: Box[] = [{ x: 0, y: 0, width, height, is: 'spare' }];
      const lines: Line[] = [];
      for (const { piece, triangles = 0, ...at } of sheets[0]!) {
        const sides = [...new Set([at.width, at.height])]
          .sort((a, b) => inchesOf(a) - inchesOf(b))
          .map(inFew);
        const [x, y] = [inchesOf(at.x), inchesOf(at.y)];
        const [wide, tall] = [inchesOf(at.width), inchesOf(at.height)];
        boxes.push({
          x,
          y,
          width: wide,
          height: tall,
          is: LOOKS[kinds.indexOf(piece) % 3]!,
          label: piece,
          short: sides.join(' × '),
        });
        // A cut along a diagonal leaves room for words that may stand there.
        const part = wide > width / 18 ? 0.3 : 0.5;
        for (const rise of [-tall, tall].slice(0, triangles / 2))
          for (const from of [0, 1 - part]) {
            const point = (along: number): [number, number] => [
              x + along * wide,
              y + (rise < 0 ? tall : 0) + along * rise,
            ];
            lines.push({ is: 'seam', from: point(from), to: point(from + part) });
          }
      }
      const cut =
        plan.sheets! > sheets.length
          ? `cut ${sheets.length} of the ${plan.buy.text.replace(/,.*/, '')} like this`
          : plan.buy.text;
      const dimensions = corner({ width: plan.width, length: plan.height }, style);
      if (!plan.sheets) dimensions.push(...stripLines(plan, style));
      const title = `${plan.fabric ? `Fabric ${plan.fabric}` : 'The cloth'}: ${cut}`;
      return {
        title: `${title}. Laid out: ${kinds.join(', ')}.`,
        caption: title,
        width,
        height,
        boxes,
        isTiled: true,
        lines,
        dimensions,
      };
    });
  });

/** The heights of the strips down the cloth; of strips cut alike, of the first. */
const stripLines = ({ strips }: FabricPlan, style: Style): Dimension[] => {
  let at = 0;
  return strips.map(({ count, height }) => {
    const from = at;
    const tall = inchesOf(height);
    at += count * tall;
    return { side: 'right', from, to: from + tall, text: lengthOf(height, style) };
  });
};
