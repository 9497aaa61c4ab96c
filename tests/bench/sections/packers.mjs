import guillotine from 'guillotine-packer';
import { MaxRectsPacker } from 'maxrects-packer/dist/maxrects-packer.mjs';

/** How many bins of that size guillotine-packer fills; all its strategies at once are its own default. */
const guillotineBins = (binWidth, binHeight, items) => {
  if (items.some(({ width, height }) => Math.max(width, height) > Math.max(binWidth, binHeight)))
    return Infinity;
  try {
    return guillotine.packer({ binWidth, binHeight, items }).length;
  } catch {
    return Infinity;
  }
};

/** The same of maxrects-packer, the best of its three ways of choosing a place; no edge-to-edge rule holds. */
const maxRectsBins = (width, height, items) =>
  Math.min(
    ...[0, 1, 2].map((logic) => {
      const options = { smart: false, pot: false, square: false, allowRotation: true, logic };
      const packer = new MaxRectsPacker(width, height, 0, options);
      packer.addArray(items.map((item) => ({ ...item })));
      return packer.bins.some(({ rects }) => rects.some(({ oversized }) => oversized))
        ? Infinity
        : packer.bins.length;
    }),
  );

/** Both general packers, each a function to how many sheets it takes. */
export const PACKERS = { 'guillotine-packer': guillotineBins, 'maxrects-packer': maxRectsBins };

/** The least height at which everything goes into one bin: by halving, then downwards from there as long as it does. */
export const leastHeight = (bins, width, items) => {
  const area = items.reduce((sum, item) => sum + item.width * item.height, 0);
  const least = Math.ceil(area / width);
  const fits = (height) => bins(width, height, items) === 1;
  let [low, high] = [least - 1, 2 * least];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) high = middle;
    else low = middle;
  }
  while (high > least && fits(high - 1)) high -= 1;
  return high;
};
