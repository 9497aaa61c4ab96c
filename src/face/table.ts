/** A cell of an author's own table: its text, and the attributes that a chart uses, as they are written. */
export interface TableCell {
  text: string;
  colspan?: string | undefined;
  rowspan?: string | undefined;
  goose?: string | undefined;
}

export const CELL_ATTRIBUTES = ['colspan', 'rowspan', 'goose'] as const;

export type Table = TableCell[][];

const cellOf = (cell: Element): TableCell => {
  const read: TableCell = { text: cell.querySelector('table') ? '<table>' : cell.textContent };
  for (const name of CELL_ATTRIBUTES) {
    const value = cell.getAttribute(name);
    if (value !== null) read[name] = value;
  }
  return read;
};

/** The first table in an element; of a table inside one of its cells only that it is there. */
export const tableIn = (element: Element): Table | undefined => {
  const table = element.querySelector('table');
  return table ? [...table.rows].map(({ cells }) => [...cells].map(cellOf)) : undefined;
};
