import type { Message } from '../measure/message.js';
import { spreadsheet } from './en/spreadsheet.js';
import type { Teller } from './teller.js';

/** The file's own words in English. They are loaded with what writes it; another language brings its own. */
const english: Record<string, unknown> = { ...spreadsheet };

/** Says what the page says, and what only a spreadsheet file does. */
export const saying =
  (t: Teller) =>
  ({ code, values }: Message): string => {
    const { sentences } = t.words;
    const own = code in sentences ? undefined : english[code];
    if (typeof own === 'function') return String((own as (values: object, t: Teller) => string)(values, t));
    return typeof own === 'string' ? own : t.say({ code, values });
  };
