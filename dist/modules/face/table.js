const CELL_ATTRIBUTES = ['colspan', 'rowspan', 'goose'];
const cellOf = (cell) => {
    const read = { text: cell.querySelector('table') ? '<table>' : cell.textContent };
    for (const name of CELL_ATTRIBUTES) {
        const value = cell.getAttribute(name);
        if (value !== null)
            read[name] = value;
    }
    return read;
};
/** The first table in an element; of a table inside one of its cells only that it is there. */
const tableIn = (element) => {
    const table = element.querySelector('table');
    return table ? [...table.rows].map(({ cells }) => [...cells].map(cellOf)) : undefined;
};

export { CELL_ATTRIBUTES, tableIn };
