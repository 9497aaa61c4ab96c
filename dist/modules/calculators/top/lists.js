import { sayInList } from '../../ledger/listing.js';
import { stripList } from '../../ledger/strip-list.js';
import { say } from './shape.js';

/** The strips to cut: all from one cloth, and each part from its own. If the author named fabrics, only one of these is right. */
const lists = ({ parts, strips }, letters = []) => {
    const head = say('partHead');
    const own = parts.map(({ part, strips }) => ({ of: part, strips }));
    if (parts.length < 2)
        return own.map((part) => stripList([part], head));
    const together = stripList([{ of: say('allParts'), strips }], head, say('stripsTogether'));
    const cloth = {
        caption: say('clothApart'),
        head: [head, sayInList('clothHead'), sayInList('buyHead')],
        rows: parts.map(({ part, fabric, buy }) => [part, fabric, buy]),
    };
    const apart = [cloth, stripList(own, head, say('stripsApart'))];
    return [...(letters.length < 2 ? [together] : []), ...(letters.length === 1 ? [] : apart)];
};

export { lists };
