import { spreadsheet } from './en/spreadsheet.js';

/** The file's own words in English. They are loaded with what writes it; another language brings its own. */
const english = { ...spreadsheet };
/** Says what the page says, and what only a spreadsheet file does. */
const saying = (t) => ({ code, values }) => {
    const { sentences } = t.words;
    const own = code in sentences ? undefined : english[code];
    if (typeof own === 'function')
        return String(own(values, t));
    return typeof own === 'string' ? own : t.say({ code, values });
};

export { saying };
