import { sayings, type Message } from '../measure/message.js';
import type { ListCell, Listing } from './listing.js';
import type { CutStrip } from './strips.js';

export interface StripSayings {
  stripsFromTop: undefined;
  stripsHead: undefined;
  stripWidthHead: undefined;
  givesHead: undefined;
  gives: Pick<CutStrip, 'gives' | 'asDrawn'>;
  /** The same with the size of each piece, for pieces of several lists, whose names may be the same. */
  givesSizes: Pick<CutStrip, 'gives' | 'asDrawn'>;
}

const say = sayings<StripSayings>();

/** The strips to cut for each fabric or part, and what comes from each. Equal strips share a row. One that is all of its cloth is not cut as a strip. */
export const stripList = (
  plans: { of: ListCell; strips: CutStrip[] }[],
  head: Message,
  caption: Message = say('stripsFromTop'),
  gives: 'gives' | 'givesSizes' = 'gives',
): Listing => ({
  caption,
  toCut: true,
  head: [head, say('stripsHead'), say('stripWidthHead'), say('givesHead')],
  rows: plans.flatMap(({ of, strips }) =>
    alikeIn(strips, gives).map((strip) => [
      of,
      ...(strips.length === 1 && strip.asDrawn ? ['', ''] : [strip.count, strip.height]),
      say(gives, { gives: strip.gives, asDrawn: strip.asDrawn }),
    ]),
  ),
});

/** Puts strips of one height together if they give the same pieces. */
const alikeIn = (strips: CutStrip[], says: keyof StripSayings): CutStrip[] => {
  const pieces = new Map<Message, number>();
  const alike = new Map<string, CutStrip>();
  for (const strip of strips) {
    for (const { piece } of strip.gives) if (!pieces.has(piece)) pieces.set(piece, pieces.size);
    const given = strip.gives.map(({ piece, count, size }) => [
      ...[pieces.get(piece), count],
      ...(says === 'givesSizes' && size ? [size.width.toFraction(), size.length.toFraction()] : []),
    ]);
    const key = [strip.height.toFraction(), strip.asDrawn, ...given].join();
    const before = alike.get(key)?.count ?? 0;
    alike.set(key, { ...strip, count: before + strip.count });
  }
  return [...alike.values()];
};
