import { batting as bedCalculator } from '../../src/calculators/batting/batting.js';
import { battingFields } from '../../src/calculators/batting/shape.js';
import { topFields } from '../../src/calculators/top/shape.js';
import { choicesOf } from '../../src/face/choices.js';
import { attributeOf } from '../../src/face/calculator.js';
import { readField, type Field } from '../../src/ledger/field.js';
import { quiltFields, type Size } from '../../src/ledger/quilt.js';
import { unlessRefused } from '../../src/ledger/refusal.js';
import type { Exact } from '../../src/measure/exact.js';
import { asTyped, type Style } from '../../src/measure/format.js';
import { bothSides, inUnit, isBegun } from '../../src/measure/parse.js';
import type { Units } from '../../src/measure/units.js';
import { BED_DROP, COTTON_WIDTH, STEP } from '../../src/trade/conventions.js';
import { worksheetFields } from '../../src/workbook/shape.js';
import { find } from './page.js';
import { batting, top, worksheet } from './parts.js';

export type Way = 'finished' | 'top' | 'bed' | 'blocks';
type Cell = HTMLInputElement | HTMLSelectElement;

export const form = find<HTMLFormElement>('.quilt');
export const cells = [...form.querySelectorAll<Cell>('input:not([type=radio]), select')];
const radios = [...form.querySelectorAll<HTMLInputElement>('[name=size]')];
export const cell = (name: string): Cell => find<Cell>(`[name=${name}]`, form);

/** The lengths that can be written there, each with its field. */
const LENGTHS: Record<string, Field<Exact>> = {
  ...quiltFields,
  drop: battingFields.drop,
  tuck: battingFields.tuck,
  block: topFields.block,
};

export const way = (): Way => {
  const { value } = radios.find(({ checked }) => checked) ?? { value: '' };
  return value === 'top' || value === 'bed' || value === 'blocks' ? value : 'finished';
};
export const setWay = (value: string): void => {
  const wanted = radios.find((radio) => radio.value === value) ?? radios[0];
  if (wanted) wanted.checked = true;
};

export const units = (): Units => (cell('units').value === 'cm' ? 'cm' : 'in');
const style = (): Style => ({ units: units() });

/** What each cell starts with. Where it differs by units, it is a usual value that follows them. */
const STARTS: Record<string, string | Record<Units, string>> = {
  width: '58',
  length: '70',
  bed: 'queen',
  drop: BED_DROP,
  tuck: { in: '0 in', cm: '0 cm' },
  block: '12',
  across: '5',
  down: '6',
  'fabric-width': COTTON_WIDTH,
  increment: STEP,
  units: 'in',
};

/** What a cell starts with, in these units. */
export const startOf = ({ name }: Cell, at: Units = units()): string => {
  const start = STARTS[name] ?? '';
  return typeof start === 'string' ? start : start[at];
};

/** The text of a cell, or undefined if it is what the cell starts with. */
export const own = (name: string): string | undefined => {
  const { value } = cell(name);
  return value === startOf(cell(name)) ? undefined : value;
};

/** Something that is wrong in the question. */
export interface Problem {
  /** The name of its cell. */
  name: string;
  message: string;
  /** It may still become right: somebody is typing. */
  isBegun: boolean;
}

const reads = (field: Field, text: string): boolean =>
  unlessRefused(
    () => readField(field, text, style(), '') !== undefined,
    () => false,
  );

const isTyping = (name: string): boolean => {
  const field = LENGTHS[name];
  const { value } = cell(name);
  return document.activeElement === cell(name) && !!field && isBegun(value, (text) => reads(field, text));
};

/** Both sides, if somebody wrote them into one of the two cells. */
const pair = (): string[] | undefined =>
  bothSides(cell('width').value, style()) ?? bothSides(cell('length').value, style());

/** The size that was written. */
const written = (problems: Problem[]): Size | undefined => {
  const [width, length] = (pair() ?? [cell('width').value, cell('length').value]).map((text, at) => {
    const name = at ? 'length' : 'width';
    return unlessRefused(
      () => readField(quiltFields[name], text, style(), name),
      ({ problem }) => {
        problems.push({ name, message: batting.teller.say(problem), isBegun: isTyping(name) });
        return undefined;
      },
    );
  });
  return width && length && { width, length };
};

/** The size of a quilt for the bed. */
const forBed = (problems: Problem[]): Size | undefined => {
  const { own: answer, issues } = bedCalculator.reckon({
    bed: cell('bed').value,
    drop: cell('drop').value,
    tuck: cell('tuck').value,
    units: units(),
  });
  problems.push(...issues.map((issue) => problemAt(issue.input, batting.teller.say(issue))));
  return answer?.quilt;
};

const problemAt = (name: string, message: string): Problem => ({ name, message, isBegun: isTyping(name) });

/** What the question comes to. Blocks have no size here: it flows from the top. */
export interface Asked {
  size: Size | undefined;
  problems: Problem[];
}

export const asked = (): Asked => {
  const problems: Problem[] = [];
  const size = way() === 'blocks' ? undefined : way() === 'bed' ? forBed(problems) : written(problems);
  if (way() === 'blocks') problems.push(...blockProblems());
  const { issues } = worksheet.outcome.reckoning;
  const ofCloth = issues.filter(({ input }) => input === 'fabricWidth' || input === 'increment');
  problems.push(...ofCloth.map((issue) => problemAt(attributeOf(issue.input), worksheet.teller.say(issue))));
  return { size, problems };
};

const blockProblems = (): Problem[] =>
  top.outcome.reckoning.issues
    .filter(({ input }) => ['block', 'across', 'down'].includes(input))
    .map((issue) => problemAt(issue.input, top.teller.say(issue)));

/** Writes both sides into their own cells, if one has them. */
export const part = (): void => {
  const sides = pair();
  if (sides) for (const [at, name] of ['width', 'length'].entries()) cell(name).value = sides[at] ?? '';
};

/** Offers the beds and the steps of people who measure in these units. */
export const offer = (): void => {
  for (const [name, field, teller] of [
    ['bed', battingFields.bed, batting.teller],
    ['increment', worksheetFields.increment, worksheet.teller],
  ] as const) {
    const list = cell(name);
    const { value } = list;
    const { none: _, ...choices } = choicesOf(field, name, value, teller) ?? {};
    const options = Object.entries({ ...choices, ...(value && { [value]: choices[value] ?? value }) });
    list.replaceChildren(...options.map(([code, words]) => new Option(words, code, false, code === value)));
  }
};

/** Chooses this, also if it is not one of those that are offered. */
export const choose = (list: Cell, value: string): void => {
  if (list instanceof HTMLSelectElement && ![...list.options].some((option) => option.value === value))
    list.add(new Option(value, value));
  list.value = value;
};

/** Writes the lengths in other units, exactly. A cell that has its start gets that of the new units. */
export const rewrite = (before: Units): void => {
  for (const one of cells) {
    const { name, value } = one;
    if (name === 'units') continue;
    if (typeof STARTS[name] === 'object' && value === startOf(one, before)) {
      choose(one, startOf(one));
      continue;
    }
    const field = LENGTHS[name] ?? (name === 'fabric-width' ? LENGTHS['width'] : undefined);
    if (!field) continue;
    const text = inUnit(value, before);
    const again = unlessRefused(
      () => {
        const length = readField(field, text, style(), name);
        const typed = length ? asTyped(length, style()) : text;
        const same = readField(field, typed, style(), name);
        return length && same?.equals(length) ? typed : text;
      },
      () => text,
    );
    const start = startOf(one);
    one.value = again === `${start} ${units()}` ? start : again;
  }
};
