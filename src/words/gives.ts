import type { StripSayings } from '../ledger/strip-list.js';
import type { Teller } from './teller.js';

type Gives = StripSayings['gives'];

const after = (lead: string, asDrawn: boolean | undefined, words: string): string =>
  asDrawn ? `${lead}: ${words}` : words;

/** What a strip gives. `lead` comes first if only the drawing says how it is cut. */
export const piecesGiven = ({ gives, asDrawn }: Gives, t: Teller, lead: string): string =>
  after(lead, asDrawn, gives.map(({ piece, count }) => `${count} × ${t.say(piece)}`).join(', '));

/** The same with the size of each piece. What has one name and one size is counted together. */
export const sizesGiven = ({ gives, asDrawn }: Gives, t: Teller, lead: string): string => {
  const counts = new Map<string, number>();
  for (const { piece, count, size } of gives) {
    const words = `${t.say(piece)}${size ? `, ${t.size(size)}` : ''}`;
    counts.set(words, (counts.get(words) ?? 0) + count);
  }
  return after(lead, asDrawn, Array.from(counts, ([words, count]) => `${count} × ${words}`).join('; '));
};
