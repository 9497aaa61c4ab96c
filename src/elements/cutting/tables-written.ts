import { parseFragment, type DefaultTreeAdapterTypes as Tree } from 'parse5';
import { CELL_ATTRIBUTES, type Table, type TableCell } from '../../face/table.js';

const childrenOf = (node: Tree.Node): Tree.ChildNode[] => ('childNodes' in node ? node.childNodes : []);
const elementsIn = (node: Tree.Node, ...names: string[]): Tree.Element[] =>
  childrenOf(node).filter(
    (child): child is Tree.Element => 'tagName' in child && names.includes(child.tagName),
  );

/** All nodes inside it, except those in templates: these are shadow roots, or not shown. */
const within = (node: Tree.Node): Tree.Node[] =>
  childrenOf(node).flatMap((child) => [child, ...within(child)]);
/** The same, with the nodes in templates. */
const withRoots = (node: Tree.Node): Tree.Node[] =>
  [...('content' in node ? [node.content] : []), ...childrenOf(node)].flatMap((child) => [
    child,
    ...withRoots(child),
  ]);
const isTable = (node: Tree.Node): boolean => 'tagName' in node && node.tagName === 'table';
const textIn = (node: Tree.Node): string =>
  'value' in node ? node.value : childrenOf(node).map(textIn).join('');

const cellOf = (cell: Tree.Element): TableCell => {
  const read: TableCell = { text: within(cell).some(isTable) ? '<table>' : textIn(cell) };
  for (const { name, value } of cell.attrs)
    for (const known of CELL_ATTRIBUTES) if (name === known) read[known] = value;
  return read;
};

/** The rows of a table in the order of the page: heads first, feet last. */
const rowsOf = (table: Tree.Node): Table =>
  ['thead', 'tbody', 'tfoot']
    .flatMap((name) => elementsIn(table, name))
    .flatMap((section) => elementsIn(section, 'tr'))
    .map((row) => elementsIn(row, 'td', 'th').map(cellOf));

const WITH_TABLES = ['quilt-cutting', 'quilt-block'];

/** The table of each cutting plan and each block that a server wrote, in that order. */
export const tablesWritten = (html: string): (Table | undefined)[] => {
  const page = parseFragment(html, { sourceCodeLocationInfo: true });
  return withRoots(page)
    .filter(
      (node): node is Tree.Element =>
        'tagName' in node &&
        WITH_TABLES.includes(node.tagName) &&
        // The server did not write one that the author shows as text, for example in a comment.
        elementsIn(node, 'template').some(({ attrs }) => attrs.some(({ name }) => name === 'shadowrootmode')),
    )
    .sort((a, b) => startOf(a) - startOf(b))
    .map((element) => {
      const table = within(element).find(isTable);
      return table && rowsOf(table);
    });
};

/** The HTML parser moves nodes out of a table that may not be in one. */
const startOf = ({ sourceCodeLocation }: Tree.Element): number => sourceCodeLocation?.startOffset ?? 0;
