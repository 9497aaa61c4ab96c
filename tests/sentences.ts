import type { Message } from '../src/measure/message.js';
import { together } from '../src/words/common.js';
import { common } from '../src/words/en/common.js';
import { Teller } from '../src/words/teller.js';

const words = together(common, { title: '', labels: {}, hints: {}, options: {}, entries: {}, sentences: {} });
const english = new Teller(words, { units: 'in' }, 'en');

/** What a reader is told of this, in English. */
export const sentence = (problem: Message): string => english.say(problem);
