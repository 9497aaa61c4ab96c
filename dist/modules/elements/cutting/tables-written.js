import { parseFragment } from 'parse5';
import { CELL_ATTRIBUTES } from '../../face/table.js';

const childrenOf = (node) => ('childNodes' in node ? node.childNodes : []);
const elementsIn = (node, ...names) => childrenOf(node).filter((child) => 'tagName' in child && names.includes(child.tagName));
/** All nodes inside it, except those in templates: these are shadow roots, or not shown. */
const within = (node) => childrenOf(node).flatMap((child) => [child, ...within(child)]);
/** The same, with the nodes in templates. */
const withRoots = (node) => [...('content' in node ? [node.content] : []), ...childrenOf(node)].flatMap((child) => [
    child,
    ...withRoots(child),
]);
const isTable = (node) => 'tagName' in node && node.tagName === 'table';
const textIn = (node) => 'value' in node ? node.value : childrenOf(node).map(textIn).join('');
const cellOf = (cell) => {
    const read = { text: within(cell).some(isTable) ? '<table>' : textIn(cell) };
    for (const { name, value } of cell.attrs)
        for (const known of CELL_ATTRIBUTES)
            if (name === known)
                read[known] = value;
    return read;
};
/** The rows of a table in the order of the page: heads first, feet last. */
const rowsOf = (table) => ['thead', 'tbody', 'tfoot']
    .flatMap((name) => elementsIn(table, name))
    .flatMap((section) => elementsIn(section, 'tr'))
    .map((row) => elementsIn(row, 'td', 'th').map(cellOf));
const WITH_TABLES = ['quilt-cutting', 'quilt-block'];
/** The table of each cutting plan and each block that a server wrote, in that order. */
const tablesWritten = (html) => {
    const page = parseFragment(html, { sourceCodeLocationInfo: true });
    return withRoots(page)
        .filter((node) => 'tagName' in node &&
        WITH_TABLES.includes(node.tagName) &&
        // The server did not write one that the author shows as text, for example in a comment.
        elementsIn(node, 'template').some(({ attrs }) => attrs.some(({ name }) => name === 'shadowrootmode')))
        .sort((a, b) => startOf(a) - startOf(b))
        .map((element) => {
        const table = within(element).find(isTable);
        return table && rowsOf(table);
    });
};
/** The HTML parser moves nodes out of a table that may not be in one. */
const startOf = ({ sourceCodeLocation }) => sourceCodeLocation?.startOffset ?? 0;

export { tablesWritten };
