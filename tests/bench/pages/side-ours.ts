import { isPlanning } from '../../hosts/reading.js';
import { allDefined, framed, inSight, layOut, planned, settled, sheetsIn, type Sheet } from './settled.js';
import type { Side } from './side.js';

type Cell = HTMLInputElement | HTMLTextAreaElement;

await allDefined();
const sheets = sheetsIn(document);
await settled(sheets);
await planned(sheets);

const rowsOf = ({ shadowRoot }: Sheet): number => shadowRoot!.querySelectorAll('tr').length;
const cellsOf = ({ shadowRoot }: Sheet): Cell[] => [
  // The cells of a grid are one row together.
  ...shadowRoot!.querySelectorAll<Cell>("input[type='text'][data-row]:not([data-at]), textarea[data-row]"),
];

/** What a sheet is called here: the tag's name, and a number where there are several. */
const nameOf = ({ localName }: Sheet, at: number): string => {
  const isAlike = (other: Sheet): boolean => other.localName === localName;
  const name = localName.replace('quilt-', '');
  return sheets.filter(isAlike).length > 1
    ? `${name} ${sheets.slice(0, at + 1).filter(isAlike).length}`
    : name;
};

/** Every cell that holds a number, by the name of its sheet and its row: `top: block`. */
const first = new Map<
  string,
  { sheet: Sheet; row: string; at: string | undefined; text: string; property: string; before: unknown }
>();
sheets.forEach((sheet, at) => {
  for (const { value, dataset } of cellsOf(sheet)) {
    const row = dataset['row']!;
    const property = row in sheet ? row : 'measured';
    const before = (sheet as unknown as Record<string, unknown>)[property];
    if (/\d/.test(value))
      // Of a grid, the last cell that holds a number.
      first.set(`${nameOf(sheet, at)}: ${row}`, {
        ...{ sheet, row, at: dataset['at'], text: value, property, before },
      });
  }
});

/** The text with another first number: a length grows by sixteenths of an inch, what is counted by one or two. */
const another = (text: string, at: number): string =>
  /\d\S* in/.test(text)
    ? text.replace(
        /(\d+)( \d+\/\d+)?/,
        (_, whole: string) => `${Number(whole) + (at >> 3)} ${(at % 8) + 1}/16`,
      )
    : text.replace(/\d+/, (whole) => `${Number(whole) + 1 + (at % 2)}`);

/** Puts a text in a cell as a keystroke does. */
const type = (cell: Cell, text: string): void => {
  cell.value = text;
  cell.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
};
const cellAt = (name: string): Cell => {
  const { sheet, row, at } = first.get(name)!;
  return cellsOf(sheet).find(({ dataset }) => dataset['row'] === row && dataset['at'] === at)!;
};
/** What is out of sight is drawn after a frame, and what is planned when its plan is ready. */
const isAtWork = (): boolean => sheets.some((sheet) => isPlanning(sheet) || sheet.isUpdatePending);
const quiet = async (): Promise<void> => {
  for (let frames = 0; frames < 2; frames = isAtWork() ? 0 : frames + 1) await framed();
};
/** What waits for a frame waits here, so that it is not counted as what is drawn at once. */
const frames: FrameRequestCallback[] = [];
const nextFrame = window.requestAnimationFrame.bind(window);
const hold = (): void => {
  window.requestAnimationFrame = (work) => frames.push(work);
};
const release = (): void => {
  window.requestAnimationFrame = nextFrame;
  frames.splice(0).forEach((work) => nextFrame(work));
};
/** The sheets that somebody who types sees. */
let seen = sheets;

window.side = {
  rows: sheets.reduce((all, sheet) => all + rowsOf(sheet), 0),
  cells: [...first.keys()],
  enter: async (name) => {
    cellAt(name).focus();
    await settled(sheets);
    layOut();
    seen = inSight(sheets);
  },
  stroke: async (name, at) => {
    hold();
    type(cellAt(name), another(first.get(name)!.text, at));
    await settled(seen);
    layOut();
  },
  finish: async () => {
    release();
    await quiet();
    return sheets.every(({ result }) => !result?.errors);
  },
  leave: async (name) => {
    const { sheet, property, before } = first.get(name)!;
    cellAt(name).blur();
    // As a page sets it: typed back it would be the reader's own, and what flows would flow no more.
    Object.assign(sheet, { [property]: before });
    await settled(sheets);
    await planned(sheets);
  },
} satisfies Side;
