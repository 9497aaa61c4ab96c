import { isServer, type LitElement, type ReactiveElement } from 'lit';
import type { Table } from './table.js';

/** Elements that still are as a server wrote them. */
const served = new WeakSet<object>();

/**
 * Whether only attributes count. They do on a server, which sees neither the content of an element nor the page around it. They do
 * in the first render in the browser too, which has to find the same as the server.
 */
export const isAsServed = (element: object): boolean => isServer || served.has(element);

/**
 * Takes over what a server wrote. Lit can do that if `@lit-labs/ssr-client` is loaded. Without it, Lit would write everything a second
 * time, so we remove the server's nodes first. We remove them too if the values do not come from attributes: in a worksheet, which
 * may give a part its size at any time, and for pieces in a table.
 * @returns whether the server's nodes stay, until {@link isTakenOver}.
 */
export const takeOver = (element: ReactiveElement): boolean => {
  const { shadowRoot, constructor } = element;
  const stays =
    (constructor as typeof LitElement).observedAttributes.includes('defer-hydration') &&
    !element.matches(`${WORKSHEET}, ${WORKSHEET} *, quilt-cutting:not([list]), quilt-block:not([chart])`);
  if (stays) served.add(element);
  else shadowRoot!.replaceChildren();
  return stays;
};

export const isTakenOver = (element: object): void => void served.delete(element);

const WORKSHEET = 'quilt-worksheet';

/**
 * Whether an element is a worksheet or in one, and the server does not know its sizes yet. On a server an element can ask its
 * surroundings only by an event. {@link answerOnServer} answers it.
 */
export const isUnknown = (element: Element): boolean =>
  isServer && !element.dispatchEvent(new Event(WORKSHEET, { bubbles: true, cancelable: true }));

/** A worksheet that a server wrote, with its parts and fabrics in order. */
interface Heard {
  worksheet: Element;
  inside: (Element & { flow?: unknown })[];
}
const heardIn = new WeakMap<Element, Heard>();

/** The worksheets of the pass that is running, and those of the pass before it. */
let hearing: Heard[] | undefined;
let known: Heard[] | undefined;

/** The parts and fabrics in a worksheet, as far as the server has seen them. */
export const insideOnServer = (worksheet: Element): Element[] => heardIn.get(worksheet)?.inside ?? [];

/**
 * Lets a worksheet on a server answer its parts. In the second pass they get the results of the first.
 * @param know gives the worksheet what the same one of the first pass knows, and lets it reckon.
 */
export const answerOnServer = <W extends Element>(worksheet: W, know: (first: W) => void): void => {
  if (!isServer) return;
  // The events of its parts pass through it.
  worksheet.attachShadow({ mode: 'open' });
  const before = known?.shift();
  const heard = before ?? { worksheet, inside: [] };
  hearing?.push(heard);
  heardIn.set(worksheet, heard);
  const given = heard.inside[Symbol.iterator]();
  worksheet.addEventListener(WORKSHEET, (event) => {
    event.stopPropagation();
    const asking = event.target as Heard['inside'][number];
    if (!before) event.preventDefault();
    if (asking === worksheet) {
      if (before) know(before.worksheet as W);
    } else if (before) asking.flow = given.next().value?.flow;
    else heard.inside.push(asking);
  });
};

/** The tables of all cutting plans and blocks of a page, in the order in which they are made. */
let tables: Iterator<Table | undefined> | undefined;
/** The table of the element that is being made, as far as the server knows it. */
export const tableOnServer = (): Table | undefined => tables?.next().value as Table | undefined;

/**
 * Writes a page several times on a server. Each pass knows more: first nothing, then the tables, then the worksheets.
 * @param tablesIn finds the tables in the HTML.
 */
export const writeAgain = (
  write: () => string,
  tablesIn: (html: string) => (Table | undefined)[],
): string => {
  try {
    hearing = [];
    const found = tablesIn(write());
    if (found.some(Boolean)) {
      hearing = [];
      tables = found.values();
      write();
    }
    known = hearing;
    hearing = undefined;
    tables = found.values();
    return write();
  } finally {
    hearing = known = tables = undefined;
  }
};
