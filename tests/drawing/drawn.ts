import { backing } from '../../src/calculators/backing/backing.js';
import { batting } from '../../src/calculators/batting/batting.js';
import { binding } from '../../src/calculators/binding/binding.js';
import { block } from '../../src/calculators/block/block.js';
import { borders } from '../../src/calculators/borders/borders.js';
import type { Calculator } from '../../src/calculators/calculator.js';
import { cutting } from '../../src/calculators/cutting/cutting.js';
import { top } from '../../src/calculators/top/top.js';
import type { Box, Caption, Dimension, Picture } from '../../src/ledger/picture.js';
import type { OwnWords } from '../../src/words/common.js';
import { backing as backingWords } from '../../src/words/en/backing.js';
import { batting as battingWords } from '../../src/words/en/batting.js';
import { binding as bindingWords } from '../../src/words/en/binding.js';
import { block as blockWords } from '../../src/words/en/block.js';
import { borders as bordersWords } from '../../src/words/en/borders.js';
import { cutting as cuttingWords } from '../../src/words/en/cutting.js';
import { top as topWords } from '../../src/words/en/top.js';
import type { Teller } from '../../src/words/teller.js';
import { english } from '../sentences.js';

/** A picture with its words as a reader sees them. */
export interface Drawn extends Omit<Picture, 'title' | 'caption' | 'boxes' | 'dimensions'> {
  title: string;
  caption: string | undefined;
  boxes: (Omit<Box, 'label' | 'short'> & { label: string | undefined; short: string | undefined })[];
  dimensions: (Omit<Dimension, 'text'> & { text: string })[];
}

const DRAWN = {
  backing: [backing, backingWords],
  batting: [batting, battingWords],
  binding: [binding, bindingWords],
  block: [block, blockWords],
  borders: [borders, bordersWords],
  cutting: [cutting, cuttingWords],
  top: [top, topWords],
} satisfies Record<string, [Calculator, OwnWords]>;

export type DrawnName = keyof typeof DRAWN;
export const DRAWN_NAMES = Object.keys(DRAWN) as DrawnName[];

const told = ({ title, caption, boxes, dimensions = [], ...picture }: Picture, t: Teller): Drawn => {
  const words = (caption: Caption | undefined): string | undefined => caption && t.caption(caption);
  return {
    ...picture,
    title: t.say(title),
    caption: words(caption),
    boxes: boxes.map((box) => ({ ...box, label: words(box.label), short: words(box.short) })),
    dimensions: dimensions.map((line) => ({ ...line, text: t.caption(line.text) })),
  };
};

/** What a calculator draws of its answer, in English; nothing where it has none. */
export const drawn = (name: DrawnName, input: object): Drawn[] => {
  const [calculator, words]: [Calculator, OwnWords] = DRAWN[name];
  const { own } = calculator.reckon(input);
  return own ? calculator.draw(own).map((picture) => told(picture, english(words))) : [];
};
