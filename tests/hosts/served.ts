// What is read off a page that a server wrote; each can be put into a page by a browser's driver.

export interface Seen {
  boxes: Record<string, number[]>;
  html: string;
  isDefined: boolean;
}

/** The place and the words of an element and its parts. */
export const look = (tag: string, page: Document = document): Seen => {
  const element = page.querySelector(tag)!;
  const root = element.shadowRoot!;
  const box = (found: Element | null): number[] => {
    const { x, y, width, height } = found?.getBoundingClientRect() ?? new DOMRect(-1);
    return [x, y, width, height];
  };
  const section = root.querySelector('section') ?? root;
  // An announcement for a screen reader comes a second after a plan is ready.
  const announced = section.querySelector('.unseen')?.textContent ?? '';
  const parts = ['.answer', '.buy', 'table', 'tr:last-child', 'input', 'select', 'svg', '.actions'];
  return {
    boxes: Object.fromEntries([
      ['host', box(element)],
      ['after', box(page.querySelector('#after'))],
      ...parts.map((part) => [part, box(root.querySelector(part))]),
    ]) as Record<string, number[]>,
    html: section.textContent.replace(announced, '').replace(/\s+/g, ' '),
    isDefined: element.matches(':defined'),
  };
};

/** Marks every node that the server wrote. */
export const mark = (tag: string, page: Document = document): void => {
  const nodes = [...page.querySelector(tag)!.shadowRoot!.querySelectorAll('*')];
  Object.assign(page.defaultView!, { nodes });
};

/** How many of the marked nodes are still there, and how many there were. */
export const kept = (page: Document = document): [left: number, all: number] => {
  const { nodes } = page.defaultView as unknown as { nodes: Element[] };
  return [nodes.filter((node) => node.isConnected).length, nodes.length];
};

export const sheetsIn = (tag: string, page: Document = document): number =>
  page.querySelector(tag)!.shadowRoot!.querySelectorAll('section').length;

/** Whether every element on the page is drawn. */
export const isAlive = (page: Document = document): boolean =>
  [...page.querySelectorAll('body *')].every(
    (element) => !element.localName.startsWith('quilt-') || 'hasUpdated' in element,
  );
