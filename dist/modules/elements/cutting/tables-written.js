import { parseFragment } from 'parse5';

const childrenOf = (node) => ('childNodes' in node ? node.childNodes : []);
const elementsIn = (node, ...names) => childrenOf(node).filter((child) => 'tagName' in child && names.includes(child.tagName));
/** All that stands in it, but in no template: those hold shadow roots, or what is not shown. */
const within = (node) => childrenOf(node).flatMap((child) => [child, ...within(child)]);
/** The same with what stands in templates. */
const withRoots = (node) => [...('content' in node ? [node.content] : []), ...childrenOf(node)].flatMap((child) => [
    child,
    ...withRoots(child),
]);
const isTable = (node) => 'tagName' in node && node.tagName === 'table';
const textIn = (node) => 'value' in node ? node.value : childrenOf(node).map(textIn).join('');
/** A table's rows as a page has them: heads first, feet last. */
const rowsOf = (table) => ['thead', 'tbody', 'tfoot']
    .flatMap((name) => elementsIn(table, name))
    .flatMap((section) => elementsIn(section, 'tr'))
    .map((row) => elementsIn(row, 'td', 'th').map((cell) => (within(cell).some(isTable) ? '<table>' : textIn(cell))));
/** The cut list in the table of each cutting plan that a server wrote, in the order in which it wrote them. */
const tablesWritten = (html) => {
    const page = parseFragment(html, { sourceCodeLocationInfo: true });
    return withRoots(page)
        .filter((node) => 'tagName' in node &&
        node.tagName === 'quilt-cutting' &&
        // One that an author shows as text, in a comment for one, was not written by the server.
        elementsIn(node, 'template').some(({ attrs }) => attrs.some(({ name }) => name === 'shadowrootmode')))
        .sort((a, b) => startOf(a) - startOf(b))
        .map((element) => {
        const table = within(element).find(isTable);
        return table && rowsOf(table);
    });
};
/** A table may have moved what stood in it where no table may have it. */
const startOf = ({ sourceCodeLocation }) => sourceCodeLocation?.startOffset ?? 0;

export { tablesWritten };
