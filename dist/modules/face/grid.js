import { nothing, html } from 'lit';

/** One cell. The first has the id of its row, and so its label. */
const gridCell = ({ id, place, name, value, wrong, ...more }) => {
    const { choices, size, placeholder, mode } = more;
    const own = place.some(Boolean) ? `${id}-${place.join('-')}` : id;
    const invalid = wrong ? 'true' : nothing;
    // A screen reader says how a grid is filled in at its first cell, and at a wrong one; not at each.
    const how = own === id || wrong ? `how-${id}` : nothing;
    if (choices)
        return html `<select part="cell" id=${own} data-row=${id} data-at=${place.join(' ')} aria-label=${name} aria-describedby=${how} aria-invalid=${invalid}> ${Object.entries({ ...choices, [value]: choices[value] ?? value }).map(([key, words]) => html `<option value=${key} ?selected=${key === value} .selected=${key === value}>${words}</option>`)} </select>`;
    return html `<input part="cell" id=${own} data-row=${id} data-at=${place.join(' ')} type="text" size=${size ?? nothing} inputmode=${mode ?? nothing} placeholder=${placeholder || nothing} autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="next" aria-label=${name} aria-describedby=${how} aria-invalid=${invalid} .defaultValue=${value} .value=${value} />`;
};
/** Whether this is a cell of a grid. */
const isOfGrid = (target) => !!target?.dataset?.['at'];
/** The cells of the grid around this one. */
const cellsAround = (one) => [
    ...(one.closest('.cells')?.querySelectorAll('[data-at]') ?? []),
];
const placeOf = ({ dataset }) => {
    const [row = 0, at = 0] = (dataset['at'] ?? '').split(' ').map(Number);
    return [row, at];
};
/** The texts in the cells around this one, row by row. */
const textsAround = (one) => {
    const rows = [];
    for (const cell of cellsAround(one))
        (rows[placeOf(cell)[0]] ??= []).push(cell.value);
    return rows;
};
/** The cells of a spreadsheet or a text, as they are copied. */
const blockOf = (pasted) => pasted
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((line) => line.split('\t'));
/** Rows of texts with a block of them put in from a place on. */
const withBlock = (rows, [from, start], block) => {
    const all = rows.map((cells) => [...cells]);
    for (const [row, line] of block.entries()) {
        const cells = (all[from + row] ??= []);
        for (const [at, text] of line.entries())
            cells[start + at] = text;
        for (let at = 0; at < cells.length; at += 1)
            cells[at] ??= '';
    }
    return all;
};
/** The cell some rows below or above this one, if there is one. */
const beyond = (one, step) => {
    const [row, at] = placeOf(one);
    const others = cellsAround(one).filter((other) => placeOf(other)[0] === row + step);
    return others[Math.min(at, others.length - 1)];
};

export { beyond, blockOf, cellsAround, gridCell, isOfGrid, placeOf, textsAround, withBlock };
