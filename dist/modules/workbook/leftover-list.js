import { shortFirst } from '../ledger/quilt.js';
import { isSame } from './flow.js';
import { leastLeftover } from './leftovers.js';
import { say } from './sayings.js';
import { namedOf, byLetter } from './shopping.js';

const leavingLines = ({ fabrics, items }) => [
    ...fabrics.map(({ letter, name, parts: [first], leftovers }) => ({
        letter,
        name,
        title: first?.title,
        leftovers,
    })),
    ...items.flatMap(({ fabric: letter, name, title, leftovers }) => leftovers ? [{ letter, name, title, leftovers }] : []),
].sort(byLetter);
/** Whether cloth is bought of which something may be left. */
const mayLeave = ({ fabrics, items }) => !!fabrics[0] || items.some(({ sheets }) => sheets);
const captionFor = (style) => say('leftoversFrom', { least: leastLeftover(style) });
/** What is left over of each fabric. */
const leftoverList = (answer, style) => ({
    caption: captionFor(style),
    head: [say('fabricHead'), say('leftoversHead')],
    rows: leavingLines(answer).map((line) => [
        line.letter ? namedOf(line) : line.title,
        say('leaves', {
            pieces: line.leftovers.map((leftover) => ({ count: leftover.count, ...shortFirst(leftover) })),
        }),
    ]),
});
/** The same for a spreadsheet, a row for each size. */
const leftoverCells = (answer, style) => mayLeave(answer)
    ? [
        [captionFor(style)],
        [say('fabricHead'), say('nameHead'), say('countHead'), say('widthInHead'), say('lengthInHead')],
        ...leavingLines(answer).flatMap(({ letter, name, title, leftovers }) => leftovers.map(({ count, width, length }) => [
            letter || title,
            name,
            count,
            width,
            length,
        ])),
        [],
    ]
    : [];
/** The cut list as it is really cut: pieces that come from what others leave may have other sizes, and another fabric. */
const asCut = (pieces, { fromLeftovers = [] }) => {
    const rest = [...pieces];
    for (const { used } of fromLeftovers)
        for (const { width, length, count } of used.part.pieces) {
            const at = rest.findIndex(({ letter, title, cut }) => letter === used.part.fabric &&
                isSame([title, cut.width, cut.length, cut.count], [used.part.title, width, length, count]));
            if (at >= 0)
                rest.splice(at, 1);
        }
    return [
        ...rest,
        ...fromLeftovers.flatMap(({ title, fabric: letter, name, cuts }) => cuts.map((cut) => ({ letter, name: letter ? name : title, title, cut }))),
    ];
};

export { asCut, leftoverCells, leftoverList, mayLeave };
