import type { Style } from '../src/measure/format.js';
import type { Message } from '../src/measure/message.js';
import type { OwnWords } from '../src/words/common.js';
import { inEnglish } from '../src/words/en/english.js';
import { Teller } from '../src/words/teller.js';

const NONE: OwnWords = { title: '', labels: {}, hints: {}, options: {}, entries: {}, sentences: {} };

/** Makes a calculator's sentences in English. */
export const english = (words: OwnWords = NONE, style: Style = { units: 'in' }): Teller =>
  new Teller(inEnglish(words), style, 'en');

const t = english();

/** The English sentence for a message that does not belong to one calculator. */
export const sentence = (problem: Message): string => t.say(problem);
