import { layOut, settled } from './settled.js';
import { PlainTable } from './plain-table.js';
import './side.js';

const table = document.body.appendChild(new PlainTable());
table.rows = Number(new URLSearchParams(location.search).get('rows'));
await settled([table]);

window.side = {
  rows: table.rows,
  cells: ['first'],
  stroke: async (_, at) => {
    const cell = table.renderRoot.querySelector('input')!;
    cell.value = String(59 + at / 8);
    cell.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await settled([table]);
    layOut();
  },
};
