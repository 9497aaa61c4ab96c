import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../src/index.js';
import type { Answer, Refused } from '../../src/reckon.js';
import type { Face } from '../../src/face/face.js';
import { CALCULATORS, type Attributes } from '../calculators.js';
import { inThisEngine } from '../engine.js';
import { isPlanning } from '../hosts/reading.js';

export { until } from '../until.js';

export type Sheet = Face;
export type { Attributes };

/** Every calculator, and what gives each a good answer. */
export const EVERY: Record<string, Attributes> = Object.fromEntries(
  Object.entries(CALCULATORS).map(([name, { given }]) => [`quilt-${name}`, given]),
);
/** Those that are given both sides of a quilt. */
export const GIVEN: Record<string, Attributes> = Object.fromEntries(
  Object.entries(EVERY).filter(([, given]) => given['width'] && given['length']),
);
export const TAGS = inThisEngine(Object.keys(GIVEN));

// The console stays clean, in every test of every file that uses this one.

const said: string[] = [];
const { console } = globalThis;
for (const level of ['warn', 'error'] as const) {
  const original = console[level].bind(console);
  console[level] = (...words: unknown[]) => {
    said.push(words.map(String).join(' '));
    original(...words);
  };
}

const stage = document.createElement('main');

beforeEach(() => {
  said.length = 0;
  document.body.append(stage);
});
afterEach(() => {
  stage.replaceChildren();
  stage.removeAttribute('style');
  stage.remove();
  expect(said, 'console').to.deep.equal([]);
});

// Putting elements on the page

/** Shows HTML on the test's page, and gives back its first element once every sheet in it is drawn and every plan made. */
export const show = async <E extends HTMLElement = HTMLElement>(
  html: string,
  until = settled,
): Promise<E> => {
  stage.innerHTML = html;
  await until(stage);
  return stage.firstElementChild as E;
};

/** Waits until every element in here, or this element, has drawn itself. A plan may still be on its way. */
export const redrawn = async (root: ParentNode): Promise<void> => {
  for (const found of [root, ...root.querySelectorAll('*')])
    if ('updateComplete' in found) while (!(await (found as Sheet).updateComplete));
};

/** The same, once every plan is made and shown. */
export const settled = async (root: ParentNode): Promise<void> => {
  await redrawn(root);
  while ([root as Sheet, ...root.querySelectorAll('*')].some(isPlanning)) {
    await new Promise((done) => setTimeout(done));
    await redrawn(root);
  }
};

/** Shows one calculator with its good answer; attributes are added, or taken away with an undefined. */
export const mount = async (
  tag: string,
  attributes: Record<string, string | true | undefined> = {},
  parent: ParentNode = stage,
): Promise<Sheet> => {
  const sheet = document.createElement(tag) as Sheet;
  for (const [name, value] of Object.entries({ ...GIVEN[tag], ...attributes }))
    if (value !== undefined) sheet.setAttribute(name, value === true ? '' : value);
  parent.append(sheet);
  await settled(sheet);
  return sheet;
};

/** `fabric-width` → `fabricWidth`. */
export const camel = (attribute: string): string =>
  attribute.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

// Looking at a sheet as its reader does

export const find = <E extends Element = HTMLElement>(sheet: Sheet, selector: string): E | null =>
  sheet.shadowRoot!.querySelector<E>(selector);
export const all = <E extends Element = HTMLElement>(sheet: Sheet, selector: string): E[] => [
  ...sheet.shadowRoot!.querySelectorAll<E>(selector),
];

/** The cell of a row: an input, a box, a <select>, or a reckoned value. */
export const cell = (sheet: Sheet, id: string): HTMLInputElement =>
  find<HTMLInputElement>(sheet, `[data-row="${id}"]`) ?? expect.fail(`${sheet.localName} has no cell ${id}`);
export const row = (sheet: Sheet, id: string): HTMLTableRowElement =>
  cell(sheet, id).closest<HTMLTableRowElement>('[part~=table] > tbody > tr')!;
export const cellIds = (sheet: Sheet): string[] => all(sheet, '[data-row]').map((at) => at.dataset['row']!);
export const isReckoned = (sheet: Sheet, id: string): boolean => cell(sheet, id).matches('[part~=value]');
export const isOpen = (sheet: Sheet, id: string): boolean => cell(sheet, id).matches('input, select');

/** The text in a cell, or whether it is ticked. */
export const valueIn = (sheet: Sheet, id: string): string => {
  const at = cell(sheet, id);
  return at.type === 'checkbox'
    ? String(at.checked)
    : (at.value ?? at.textContent).replaceAll('\u00a0', ' ').trim();
};
export const how = (sheet: Sheet, id: string): string => text(row(sheet, id).querySelector('[part~=how]'));
export const text = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replaceAll('\u00ad', '').replace(/\s+/g, ' ').trim();
export const answer = (sheet: Sheet): string => text(find(sheet, '[part~=answer]'));
export const messageAt = (sheet: Sheet, id: string): string =>
  text(row(sheet, id).querySelector('[part~=error]'));

/** The row has a colour of its own. */
const isMarked = (at: Element): boolean => getComputedStyle(at).backgroundColor !== 'rgba(0, 0, 0, 0)';
export const markedRows = (sheet: Sheet): string[] => cellIds(sheet).filter((id) => isMarked(row(sheet, id)));

/** What is struck out or faded reads as not to be trusted. */
export const looksStale = (element: Element | null): boolean => {
  for (let at = element; at; at = at.parentElement) {
    const { opacity, textDecorationLine } = getComputedStyle(at);
    if (Number(opacity) < 1 || textDecorationLine.includes('line-through')) return true;
  }
  return false;
};

/** Every word a reader sees or hears, without what she typed herself and what a message quotes of it. */
export const words = (sheet: Sheet): string =>
  [
    sheet.shadowRoot!.textContent,
    // The name of the sheet itself may have a number, for there may be another on the page.
    ...all(sheet, 'section [aria-label], title').map((at) => at.getAttribute('aria-label') ?? at.textContent),
    ...all<SVGElement>(sheet, 'svg *').flatMap((at) => [...at.attributes].map(({ value }) => value)),
  ]
    .join('\n')
    .replace(/“[^”]*”/g, '');

/** The result, which has to be good; a calculator's own keys may be named. */
export const answered = <Own = unknown>(sheet: Sheet): Answer & Own => {
  const { result } = sheet;
  return result.errors ? expect.fail(JSON.stringify(result.errors)) : (result as Answer & Own);
};
export const refused = (sheet: Sheet): Refused =>
  sheet.result.errors ? sheet.result : expect.fail('There is no error.');

// What a reader does

/** Replaces the text of a cell like typing or pasting: the browser itself fires the events. */
export const write = async (sheet: Sheet, id: string, typed: string): Promise<void> => {
  await reveal(sheet, id);
  const at = cell(sheet, id);
  at.focus();
  at.select();
  document.execCommand(typed ? 'insertText' : 'delete', false, typed);
  await settled(sheet);
};
export const leave = async (sheet: Sheet): Promise<void> => {
  (sheet.shadowRoot!.activeElement as HTMLElement | null)?.blur();
  await settled(sheet);
};
export const enter = async (sheet: Sheet, id: string): Promise<void> => {
  await reveal(sheet, id);
  cell(sheet, id).focus();
  await settled(sheet);
};
export const writeAndLeave = async (sheet: Sheet, id: string, typed: string): Promise<void> => {
  await write(sheet, id, typed);
  await leave(sheet);
};
export const choose = async (sheet: Sheet, id: string, value: string): Promise<void> => {
  await reveal(sheet, id);
  const at = cell(sheet, id);
  at.value = value;
  for (const type of ['input', 'change'])
    at.dispatchEvent(new Event(type, { bubbles: true, composed: type === 'input' }));
  await settled(sheet);
};

/** A cell of a grid, by its row and its place in it, from 1. */
export const gridCell = (sheet: Sheet, row: number, place: number): HTMLInputElement =>
  find<HTMLInputElement>(sheet, `[data-at="${row - 1} ${place - 1}"]`) ??
  expect.fail(`There is no cell ${row}, ${place}`);
/** Goes to a cell of a grid, and replaces what is in it. */
export const writeInGrid = async (sheet: Sheet, row: number, place: number, typed: string): Promise<void> => {
  const at = gridCell(sheet, row, place);
  at.focus();
  at.select();
  document.execCommand(typed ? 'insertText' : 'delete', false, typed);
  await settled(sheet);
};
export const chooseInGrid = async (
  sheet: Sheet,
  row: number,
  place: number,
  value: string,
): Promise<void> => {
  const at = gridCell(sheet, row, place);
  at.focus();
  at.value = value;
  for (const type of ['input', 'change'])
    at.dispatchEvent(new Event(type, { bubbles: true, composed: type === 'input' }));
  await settled(sheet);
};
/** A cut list of so many sizes, 20 of each, that a page plans it in the background. */
export const LONG_LIST = Array.from({ length: 24 }, (_, at) => `A | p${at} | ${2 + at / 8} x 4 | 20`).join(
  '\n',
);
/** Pastes a text into a cell of a grid, as the clipboard brings it. */
export const pasteInGrid = async (
  sheet: Sheet,
  row: number,
  place: number,
  pasted: string,
): Promise<void> => {
  const at = gridCell(sheet, row, place);
  at.focus();
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', pasted);
  at.dispatchEvent(
    new ClipboardEvent('paste', { clipboardData, bubbles: true, composed: true, cancelable: true }),
  );
  await settled(sheet);
};
/** The cell of a grid that has the focus: its row and its place, from 0. */
export const atInGrid = (sheet: Sheet): string | undefined =>
  (sheet.shadowRoot!.activeElement as HTMLElement | null)?.dataset['at'];

/** A key with the keyboard's own event; a chord (`Alt+ArrowUp`) made here, since not every driver can hold a key. */
export const press = async (sheet: Sheet, keys: string): Promise<void> => {
  const [key, ...held] = keys.split('+').reverse() as [string, ...string[]];
  if (held.length === 0) await sendKeys({ press: key });
  else
    sheet.shadowRoot!.activeElement!.dispatchEvent(
      new KeyboardEvent('keydown', {
        key,
        altKey: held.includes('Alt'),
        shiftKey: held.includes('Shift'),
        bubbles: true,
        composed: true,
        cancelable: true,
      }),
    );
  await settled(sheet);
};
export const at = (sheet: Sheet): string | undefined =>
  (sheet.shadowRoot!.activeElement as HTMLElement | null)?.dataset['row'];

const buttonReading = (sheet: Sheet, reading: string, id?: string): HTMLButtonElement | undefined =>
  [...(id ? row(sheet, id) : sheet.shadowRoot!).querySelectorAll('button')].find((found) =>
    text(found).startsWith(reading),
  );
export const buttonIn = (sheet: Sheet, reading: string, id?: string): HTMLButtonElement =>
  buttonReading(sheet, reading, id) ?? expect.fail(`There is no button ${reading}`);
export const pressButton = async (sheet: Sheet, reading: string, id?: string): Promise<void> => {
  if (!buttonReading(sheet, reading, id)) await unfold(sheet);
  buttonIn(sheet, reading, id).click();
  await settled(sheet);
};
/** Opens everything that is folded away at first: settings, working, lists, copies. */
export const unfold = async (sheet: Sheet): Promise<void> => {
  all(sheet, 'button[aria-expanded=false]').forEach((button) => button.click());
  await settled(sheet);
};

/** The same, if this row is folded away. */
const reveal = async (sheet: Sheet, id: string): Promise<void> => {
  if (cell(sheet, id).closest('.folded')) await unfold(sheet);
};

/** Records the events that reach a target, with the result at that moment. */
export const listen = (sheet: Sheet, target: EventTarget = sheet): string[] => {
  const heard: string[] = [];
  for (const type of ['input', 'change'])
    target.addEventListener(type, () => heard.push(`${type} ${sheet.result.buy?.text ?? 'errors'}`));
  return heard;
};

/** The rectangles of a sheet's first drawing, in the units of its own scale, and the room they take together. */
export const drawn = (
  sheet: Sheet,
): { rectangles: DOMRect[]; width: number; height: number; words: string[] } => {
  const svg = find<SVGSVGElement>(sheet, 'svg[role=img]')!;
  const rectangles = [...svg.querySelectorAll<SVGPathElement>('path[d$=z]')].map((at) => at.getBBox());
  const shapes = [
    ...rectangles,
    ...[...svg.querySelectorAll('path[d$=Z]')].map((at) => (at as SVGPathElement).getBBox()),
  ];
  const extent = (from: 'x' | 'y', along: 'width' | 'height'): number =>
    Math.max(...shapes.map((at) => at[from] + at[along])) - Math.min(...shapes.map((at) => at[from]));
  return {
    rectangles,
    width: extent('x', 'width'),
    height: extent('y', 'height'),
    words: [...svg.querySelectorAll('text')].map((at) => text(at)),
  };
};
/** The lists under the drawing: their rows as cells of text. */
export const listed = (sheet: Sheet, caption: string): string[][] =>
  all<HTMLTableElement>(sheet, 'table[part~=list]')
    .filter((table) => text(table.caption) === caption)
    .flatMap((table) => [...table.tBodies[0]!.rows].map((line) => [...line.cells].map((at) => text(at))));
