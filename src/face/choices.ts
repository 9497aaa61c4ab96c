import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';

/**
 * What can be chosen in an input's cell, in words, and what stands there already, which is none of these where it was written in
 * an attribute; undefined where it is no choice.
 */
export const choicesOf = (
  field: Field | undefined,
  key: string,
  text: string,
  { words, style }: Teller,
): Record<string, string> | undefined => {
  const offered = field?.offered?.[style.units] ?? field?.options;
  if (!offered) return undefined;
  const wordsOf = words.options[key] ?? {};
  const standing = text.split(', ').filter((choice) => wordsOf[choice]);
  return Object.fromEntries([...offered, ...standing].map((choice) => [choice, wordsOf[choice] ?? choice]));
};
