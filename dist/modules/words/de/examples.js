/** An example as this page reads it: German is also spoken where a point marks decimals, as in Switzerland. */
const so = (text, { style }) => style.comma ? text.replace(/(\d)\.(\d)/g, '$1,$2') : text.replace(/(\d),(\d)/g, '$1.$2');
const joined = (things, word) => things.length > 1 ? `${things.slice(0, -1).join(', ')} ${word} ${things.at(-1) ?? ''}` : things.join('');
/** `a, b und c` */
const listed = (things) => joined(things, 'und');
/** Examples or choices: `a, b oder c` */
const or = (examples, t) => so(joined(examples, 'oder'), t);
const isMetric = (text) => /m$/.test(text);
/** Examples for a sentence, metric ones first. */
const like = (examples, t) => {
    const metricFirst = [...examples].sort((a, b) => Number(isMetric(b)) - Number(isMetric(a)));
    return `Zum Beispiel ${or(metricFirst, t)}.`;
};
/** Texts that the parser reads where a comma marks decimals; the tests go through all of them. */
const LENGTHS = ['132 cm', '52,5', '52 1/2 in'];
const TOGETHER = ['1 m 32 cm', '30 + 10 cm', '52 1/2 in'];
const SUM = '5 cm + 10 cm';
const PRODUCT = '3 * 30 cm';
const BRACKETED = '2 * (30 + 10) cm';
const STEPS = ['10 cm', '25 cm', '50 cm', '1/4 yd'];
const SEVERAL = '5; 11,5 cm';
const SIZE = '150 x 200 cm';
const SHEET = '45 x 50 cm';
const CUT_LINE = 'A | Quadrat | 9 cm | 12';
const PACKAGE = 'groß 230 x 250 cm @ 29';
const PRICE = '12,50';
/** What a shop's step or a mark of a ruler makes of a length. */
const upTo = (step, t) => {
    const text = t.stated(step);
    return `aufgerundet auf ${/^\s*thirds\s*$/i.test(text) ? 'Achtel oder Drittel yd' : `volle ${text}`}`;
};
/** `66 ≥ 65 in` */
const reaches = (reach, need, t) => `${t.reckoned(reach)} ≥ ${t.l(need)}`;
const STRIP = { one: 'Streifen', other: 'Streifen' };
const BLOCK = { one: 'Block', other: 'Blöcke' };

export { BLOCK, BRACKETED, CUT_LINE, LENGTHS, PACKAGE, PRICE, PRODUCT, SEVERAL, SHEET, SIZE, STEPS, STRIP, SUM, TOGETHER, like, listed, or, reaches, so, upTo };
