import { layOut } from './settled.js';
import './side.js';

/** What is used here of jspreadsheet-ce, which a script of the page makes global. */
declare const jspreadsheet: (
  place: HTMLElement,
  options: { data: (string | number)[][] },
) => {
  setValue: (cell: string, value: string) => void;
  getValue: (cell: string, processed: boolean) => string;
};

/** Twenty sums of the cell that is typed in, and twenty of those: every formula is reckoned again at each keystroke. */
const data = Array.from({ length: 40 }, (_, at) => [
  `Row ${at}`,
  at ? at : 58,
  at < 20 ? `=B1*2+${at}` : `=C${at - 19}/36+${at}`,
]);
const sheet = jspreadsheet(document.body.appendChild(document.createElement('div')), { data });

let value = 58;

window.side = {
  rows: data.length,
  cells: ['B1'],
  stroke: (_, at) => {
    value = 59 + at / 8;
    sheet.setValue('B1', String(value));
    layOut();
    return Promise.resolve();
  },
  finish: () => {
    // The last of the forty, worked here too: C20 is 2 × B1 + 19.
    const shown = Number(sheet.getValue('C40', true));
    if (Math.abs(shown - ((value * 2 + 19) / 36 + 39)) > 0.01)
      throw new Error(`jspreadsheet shows ${shown} where B1 is ${value}`);
    return Promise.resolve(true);
  },
};
