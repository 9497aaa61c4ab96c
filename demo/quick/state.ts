import { attributeOf } from '../../src/face/calculator.js';
import type { Face } from '../../src/face/face.js';
import { textOf } from '../../src/ledger/field.js';
import { inUnit } from '../../src/measure/parse.js';
import type { Units } from '../../src/measure/units.js';
import { forget as forgetFabrics, keep as keepFabrics, recall as recallFabrics } from './fabrics.js';
import { isUsual, list, parts, place, worksheet } from './parts.js';
import { cell, cells, choose, offer, own, setWay, startOf, units, way } from './question.js';

/** The inputs that the question has a cell for, or that come from it. */
const ASKED = ['width', 'length', 'block', 'across', 'down'];
/** The same for the worksheet, which is one of the sheets below. */
const ASKED_OF_ALL = [...ASKED, 'fabricWidth', 'increment'];

interface Sheet {
  name: string;
  element: Face;
  inputs: string[];
}

const sheets: Sheet[] = [
  ...parts.map(({ key, element }) => ({
    name: key,
    element,
    inputs: [...Object.keys(element.calculator.fields).filter((key) => !ASKED.includes(key)), 'fabric'],
  })),
  {
    name: 'list',
    element: list,
    inputs: Object.keys(worksheet.calculator.fields).filter((key) => !ASKED_OF_ALL.includes(key)),
  },
];
const valueOf = (element: object, key: string): unknown => Reflect.get(element, key) as unknown;

/** A cut list may be rows of cells; every other value is a text, or yes or no. */
const written = (value: unknown): string =>
  Array.isArray(value)
    ? value.map((row) => (Array.isArray(row) ? row.join(' | ') : textOf(row))).join('\n')
    : textOf(value);

/** The first value of each input. A link has only values that differ from them. */
const starts = new Map<string, unknown>();

/** Notes what every input is before anybody changes it. */
export const begin = (): void => {
  for (const { name, element, inputs } of sheets)
    for (const key of inputs) starts.set(`${name}.${key}`, valueOf(element, key));
};

/** Everything about the quilt that differs from the start, as short texts. */
export const state = (): URLSearchParams => {
  const kept = new URLSearchParams();
  if (way() !== 'finished') kept.set('size', way());
  for (const { name } of cells) {
    const text = own(name);
    if (text !== undefined) kept.set(name, text);
  }
  for (const { name, element, inputs } of sheets) {
    for (const key of inputs) {
      const value = valueOf(element, key);
      if ((value ?? undefined) !== starts.get(`${name}.${key}`))
        kept.set(`${name}.${attributeOf(key)}`, written(value));
    }
    for (const [id, value] of Object.entries(element.measured ?? {}))
      kept.set(`${name}.measured.${id}`, value);
  }
  for (const { name, key, wish } of parts)
    if (wish && (wish.checked !== isUsual(name, way()) || (!wish.checked && isTold(kept, key))))
      kept.set(key, wish.checked ? 'yes' : 'no');
  keepFabrics(kept);
  return kept;
};

/** Whether it says something of a part. */
const isTold = (kept: URLSearchParams, name: string): boolean =>
  [...kept.keys()].some((key) => key.startsWith(`${name}.`));

/** Makes the page show this quilt. What it does not say is as at the start. */
export const recall = (kept: URLSearchParams): void => {
  setWay(kept.get('size') ?? '');
  choose(cell('units'), kept.get('units') === 'cm' ? 'cm' : 'in');
  worksheet.units = units();
  offer();
  for (const one of cells) if (one.name !== 'units') choose(one, kept.get(one.name) ?? startOf(one));
  for (const { name, key, wish } of parts) {
    if (!wish) continue;
    const said = kept.get(key);
    // A link from before does not say that there are borders, only how they are.
    wish.checked = said ? said === 'yes' : isTold(kept, key) || isUsual(name, way());
  }
  for (const sheet of sheets) recallSheet(sheet, kept);
  forgetFabrics();
  recallFabrics(kept);
  place(way());
};

const recallSheet = ({ name, element, inputs }: Sheet, kept: URLSearchParams): void => {
  for (const key of inputs) {
    const start = starts.get(`${name}.${key}`);
    const written = kept.get(`${name}.${attributeOf(key)}`);
    const value = typeof start === 'boolean' ? written === 'true' : written;
    Reflect.set(element, key, written === null ? start : value);
  }
  const measured = `${name}.measured.`;
  element.measured = Object.fromEntries(
    [...kept]
      .filter(([key]) => key.startsWith(measured))
      .map(([key, value]) => [key.slice(measured.length), value]),
  );
};

/** Gives every number alone its unit, so that the quilt stays the same in other units. */
export const writeUnits = (before: Units): void => {
  for (const { element, inputs } of sheets) {
    const { measured = {}, calculator, result } = element;
    element.measured = Object.fromEntries(
      Object.entries(measured).map(([id, text]) => [id, inUnit(text, before)]),
    );
    for (const key of inputs) {
      const written = valueOf(element, key);
      if (typeof written !== 'string') continue;
      const row = result.working.find(({ id, role }) => id === key && role === 'given');
      const exactly =
        row?.value.startsWith('≈') && row.inches ? `${row.inches} in` : (row?.code ?? row?.value);
      Reflect.set(element, key, calculator.fields[key]?.marked?.(written, before) ?? exactly ?? written);
    }
  }
};
