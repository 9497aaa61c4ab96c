import '../src/index.js';
import { exact } from '../src/measure/exact.js';
import { length, number } from '../src/measure/format.js';
import { inUnit } from '../src/measure/parse.js';
import type { Units } from '../src/measure/units.js';
import { attributeOf } from '../src/face/calculator.js';

interface Size {
  width: string;
  length: string;
}

/** A calculator on this page. */
interface Calculator extends HTMLElement {
  calculator: { fields: Record<string, { marked?(text: string, units: Units): string }> };
  units: Units;
  measured: Record<string, string> | undefined;
  result: {
    errors?: { input: string; message: string }[];
    finished?: Size;
    quilt?: Size;
    working: { id: string; role: string; value: string; code?: string; inches?: string }[];
  };
}

const form = document.querySelector<HTMLFormElement>('.quilt')!;
const names = ['backing', 'binding', 'borders', 'batting'];
const calculators = Object.fromEntries(
  names.map((name) => [name, document.querySelector<Calculator>(`quilt-${name}`)!]),
);
const said = document.querySelector<HTMLElement>('.flow')!;
const SHARED = ['width', 'length', 'size', 'fabric-width', 'units'];

const property = (attribute: string): string =>
  attribute.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const valueOf = (element: Element, attribute: string): unknown =>
  (element as unknown as Record<string, unknown>)[property(attribute)];
const set = (element: Element, attribute: string, value: unknown): void => {
  (element as unknown as Record<string, unknown>)[property(attribute)] = value;
};
const ownInputs = (element: Element): string[] =>
  ((element.constructor as unknown as { observedAttributes: string[] }).observedAttributes ?? []).filter(
    (attribute) => !SHARED.includes(attribute) && !['lock', 'name', 'fabric'].includes(attribute),
  );

/** The first values of each calculator. The address has only values that differ from them. */
const starts = new Map<string, unknown>();

const isTop = (): boolean => new FormData(form).get('size') === 'top';

/** Gives the size to all four. If it is the size of the top, the other three get the size with borders. */
const share = (): void => {
  const data = new FormData(form);
  for (const element of Object.values(calculators))
    for (const attribute of ['fabric-width', 'units']) set(element, attribute, data.get(attribute));
  const { backing, binding, batting } = calculators;
  const borders = calculators['borders']!;
  for (const side of ['width', 'length'] as const) set(borders, side, data.get(side));
  for (const element of [backing!, binding!, batting!]) {
    set(element, 'lock', isTop() ? 'units width length' : 'units');
    for (const side of ['width', 'length'] as const) {
      const finished = borders.result.finished?.[side];
      // Until the borders have an answer there is no size: that of the top would be too small.
      set(element, side, isTop() ? finished && `${finished} in` : data.get(side));
    }
  }
  say();
};

/** Says what is wrong with the size, and if the four are not all for the same quilt. */
const say = (): void => {
  const data = new FormData(form);
  const units = data.get('units') === 'cm' ? 'cm' : 'in';
  const text = ({ width, length: long }: Size): string =>
    `${number(exact(width), { units })} × ${length(exact(long), { units })}`.replaceAll(' ', '\u00a0');
  const { backing, borders, batting } = calculators;
  const wrong = (isTop() ? borders! : backing!).result.errors ?? [];
  for (const cell of form.querySelectorAll('input'))
    cell.setAttribute('aria-invalid', `${wrong.some(({ input }) => attributeOf(input) === cell.name)}`);
  const { finished } = borders!.result;
  const [width, long] = ['width', 'length'].map(
    (side) => borders!.result.working.find(({ id }) => id === side)?.inches,
  );
  const given = width && long ? { width, length: long } : undefined;
  const isHere = (input: string): boolean => !!form.elements.namedItem(attributeOf(input));
  const sentences = wrong
    .filter(({ input }) => isTop() || isHere(input))
    .map(({ input, message }) => (isHere(input) ? message : `Borders: ${message}`));
  if (wrong.length && isTop())
    sentences.push('Backing, binding and batting need the size with borders first.');
  else if (finished && given && isTop())
    sentences.push(
      `With its borders the quilt is ${text(finished)}. Backing, binding and batting are for that size.`,
    );
  else if (finished && given)
    sentences.push(
      `Backing, binding and batting are for a quilt of ${text(given)}. The borders go round a top of that size and make it ${text(finished)}. If ${text(given)} is your top without borders, choose that above.`,
    );
  const { quilt } = batting!.result;
  if (batting!.result.working.some(({ id }) => id === 'bedWidth') && quilt)
    sentences.push(
      `The batting is for the bed, a quilt of ${text(quilt)}; the others are for the size above.`,
    );
  said.textContent = sentences.join(' ');
};

/** Gives every number alone its unit, so that the quilt stays the same in other units. */
const writeUnits = (): void => {
  for (const element of Object.values(calculators)) {
    const { units, measured = {}, calculator, result } = element;
    element.measured = Object.fromEntries(
      Object.entries(measured).map(([id, text]) => [id, inUnit(text, units)]),
    );
    const own = element as unknown as Record<string, unknown>;
    for (const { id, role, value, code, inches } of result.working) {
      const written = own[id];
      if (role !== 'given' || typeof written !== 'string') continue;
      const exactly = value.startsWith('≈') && inches ? `${inches} in` : (code ?? value);
      own[id] = calculator.fields[id]?.marked?.(written, units) ?? exactly;
    }
  }
  for (const attribute of ['width', 'length', 'fabric-width'])
    (form.elements.namedItem(attribute) as HTMLInputElement).value = String(
      valueOf(calculators['borders']!, attribute),
    );
};

/** Puts the changes into the address, so that a link opens the same quilt. */
const keep = (): void => {
  const state = new URLSearchParams();
  for (const [key, value] of new FormData(form)) if (typeof value === 'string') state.set(key, value);
  for (const [name, element] of Object.entries(calculators))
    for (const attribute of ownInputs(element)) {
      const value = valueOf(element, attribute) as string | boolean | undefined;
      if (value !== starts.get(`${name}.${attribute}`))
        state.set(`${name}.${attribute}`, String(value ?? ''));
    }
  for (const [name, { measured = {} }] of Object.entries(calculators))
    for (const [id, value] of Object.entries(measured)) state.set(`${name}.measured.${id}`, value);
  history.replaceState(null, '', `#${state}`);
};

const recall = (): void => {
  const state = new URLSearchParams(location.hash.slice(1));
  for (const key of SHARED) {
    const cell = form.elements.namedItem(key) as HTMLInputElement;
    if (state.has(key)) cell.value = state.get(key)!;
  }
  for (const [name, element] of Object.entries(calculators))
    for (const attribute of ownInputs(element)) {
      const key = `${name}.${attribute}`;
      const start = starts.get(key);
      const written = state.get(key);
      set(
        element,
        attribute,
        written === null ? start : typeof start === 'boolean' ? written === 'true' : written,
      );
    }
  for (const [name, element] of Object.entries(calculators)) {
    const typed = [...state].filter(([key]) => key.startsWith(`${name}.measured.`));
    element.measured = Object.fromEntries(
      typed.map(([key, value]) => [key.slice(`${name}.measured.`.length), value]),
    );
  }
  share();
};

for (const [name, element] of Object.entries(calculators))
  for (const attribute of ownInputs(element)) starts.set(`${name}.${attribute}`, valueOf(element, attribute));

form.addEventListener('submit', (event) => event.preventDefault());
document.addEventListener('input', ({ target }) => {
  if (target === form.elements.namedItem('units')) writeUnits();
  // A size typed into one calculator is the size of the quilt for all. Only the borders have the size of the top.
  const calculator = Object.values(calculators).find((element) => element === target);
  const sides = isTop() && calculator !== calculators['borders'] ? [] : ['width', 'length'];
  if (calculator)
    for (const attribute of [...sides, 'fabric-width'])
      (form.elements.namedItem(attribute) as HTMLInputElement).value = String(valueOf(calculator, attribute));
  share();
  keep();
});
// The address holds the quilt, so these links scroll without changing it.
document.querySelector('nav')!.addEventListener('click', (event) => {
  const place = (event.target as Element).getAttribute('href');
  if (!place) return;
  event.preventDefault();
  document.querySelector(place)!.scrollIntoView();
});
addEventListener('hashchange', () => {
  if (location.hash.includes('=')) recall();
});
recall();
