import { css, html, nothing } from 'lit';
import { CELLS, WAYS, isEmptyRow } from '../../calculators/cutting/cut-cells.js';
import { say } from '../../calculators/cutting/shape.js';
import { fractionKeys } from '../../face/cell.js';
import { gridCell } from '../../face/grid.js';
import { sayInFace } from '../../words/face-sayings.js';

/** A row from the texts in its cells, and back. */
const rowOf = (texts) => Object.fromEntries(CELLS.map((cell, at) => [cell, texts[at] ?? '']));
const textsOf = (row) => CELLS.map((cell) => row[cell] ?? '');
const waysIn = (t) => Object.fromEntries(WAYS.map((way) => [way, t.say(say('cutWay', { way }))]));
/** The cells that hold a length, and so fractions. */
const isSide = (cell) => cell === 'width' || cell === 'length';
/** The list as a row of cells for each piece, with an empty row after the last. */
const listGrid = ({ id, label, t }, list) => {
    const { rows, fabrics, isWrong, entered, typeIn } = list;
    const ways = waysIn(t);
    const head = (cell) => t.say(say('cellHead', { cell }));
    const cellIn = (shown, row, cell, at) => gridCell({
        id,
        place: [row, at],
        name: t.say(say('cellName', { row: row + 1, cell })),
        value: cell === 'way' ? shown.way || 'rectangle' : (shown[cell] ?? ''),
        wrong: isWrong(row, cell),
        choices: cell === 'way' ? ways : cell === 'fabric' ? fabrics : undefined,
        // A square has one side.
        placeholder: cell === 'length' ? shown.width : undefined,
        mode: cell === 'count' ? 'numeric' : undefined,
    });
    const line = (shown, row) => {
        const hasKeys = entered?.[0] === row && isSide(CELLS[entered[1]]);
        return html `<div class="line ${isEmptyRow(shown) ? 'next' : ''}"> ${CELLS.map((cell, at) => cellIn(shown, row, cell, at))} ${hasKeys ? fractionKeys(typeIn, t.say(sayInFace('fractionKeys'))) : nothing} </div>`;
    };
    return html `<div class="cells lines" role="group" aria-label=${label}> <div class="line heads" aria-hidden="true">${CELLS.map((cell) => html `<span>${head(cell)}</span>`)}</div> ${[...rows, {}].map(line)} </div>`;
};
const listStyles = css `.sheet .lines{display:block;container-type:inline-size;min-inline-size:min(14em,90cqi)}.sheet .line{display:grid;grid-template-columns:repeat(24,minmax(0,1fr));gap:3px 5px;padding-block:4px;border-block-end:var(--quilt-rule,1px solid var(--_faint))}.line>*{grid-column:span 12}.line>:is(:nth-child(2),.keys){grid-column:1 / -1}.line :is(input,select){inline-size:100%;margin:0;min-inline-size:0;padding-inline:3px}.line ::placeholder{color:inherit;opacity:0.6}.heads{font-size:0.85em;color:var(--_soft);line-height:1.2}.line.next:not(:focus-within){border:0}@container (max-width: 13.9em){.line :is(input,select){font-size:max(0.8em,16px)}}@container (min-width: 14em){.line>:nth-child(1){grid-column:span 5}.line>:nth-child(2){grid-column:span 19}.line>:is(:nth-child(3),:nth-child(4),:nth-child(5)){grid-column:span 8}.line>:nth-child(6){grid-column:1 / -1}}.lines:has(select:first-child) .line>:nth-child(-n + 2){grid-column:1 / -1}@container (min-width: 30em){.lines:has(select:first-child) .line>:nth-child(1){grid-column:span 10}.lines:has(select:first-child) .line>:nth-child(2){grid-column:span 14}.line>:is(:nth-child(3),:nth-child(4)){grid-column:span 4}.line>:nth-child(5){grid-column:span 3}.line>:nth-child(6){grid-column:span 13}}`;

export { listGrid, listStyles, rowOf, textsOf };
