import { sayings, type Message } from '../measure/message.js';
import type { ListCell, Listing } from './listing.js';
import type { CutStrip } from './strips.js';

export interface StripSayings {
  stripsFromTop: undefined;
  stripsHead: undefined;
  stripWidthHead: undefined;
  givesHead: undefined;
  gives: Pick<CutStrip, 'gives'>;
}

const say = sayings<StripSayings>();

/** The strips to cut for each fabric or part, and what comes from each. Equal strips share a row. */
export const stripList = (
  plans: { of: ListCell; strips: CutStrip[] }[],
  head: Message,
  caption: Message = say('stripsFromTop'),
): Listing => ({
  caption,
  toCut: true,
  head: [head, say('stripsHead'), say('stripWidthHead'), say('givesHead')],
  rows: plans.flatMap(({ of, strips }) =>
    alikeIn(strips).map(({ count, height, gives }) => [of, count, height, say('gives', { gives })]),
  ),
});

/** Puts strips of one height together if they give the same pieces. */
const alikeIn = (strips: CutStrip[]): CutStrip[] => {
  const pieces = new Map<Message, number>();
  const alike = new Map<string, CutStrip>();
  for (const strip of strips) {
    for (const { piece } of strip.gives) if (!pieces.has(piece)) pieces.set(piece, pieces.size);
    const given = strip.gives.map(({ piece, count }) => [pieces.get(piece), count]);
    const key = [strip.height.toFraction(), ...given].join();
    const before = alike.get(key)?.count ?? 0;
    alike.set(key, { ...strip, count: before + strip.count });
  }
  return [...alike.values()];
};
