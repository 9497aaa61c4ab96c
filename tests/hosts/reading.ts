import type { AxeResults, RunOptions } from 'axe-core';

// What is read off a page: each takes the page's document, and by itself, put into a page by a browser's driver, its own.

export interface Reading {
  words: string[];
  results: string[];
}

/** What makes plans for a sheet, and what is heard of it. */
interface Plans {
  reckon(work: (plan: (...asked: unknown[]) => unknown) => unknown, isEarly?: boolean): unknown;
  renew(): void;
  heard?: { isWaiting: boolean; isUntold: boolean };
}

/** Whether a plan for this sheet is being made, or is ready but not shown yet. The first question makes it reckon once more. */
export const isPlanning = (sheet: Element): boolean => {
  const { plans, isConnected } = sheet as Element & { plans?: Plans };
  if (!plans || !isConnected) return false;
  if (!plans.heard) {
    const heard = { isWaiting: false, isUntold: false };
    plans.heard = heard;
    const { reckon, renew } = plans;
    plans.reckon = (work, isEarly) => {
      heard.isWaiting = false;
      const listened: typeof work = (plan) =>
        work((...asked) => {
          const planned = plan(...asked);
          // In place of a plan, how much of it is made.
          heard.isWaiting ||= typeof planned === 'number';
          return planned;
        });
      return reckon.call(plans, listened, isEarly);
    };
    plans.renew = () => {
      renew();
      heard.isUntold = true;
      // The plan is shown in the next turn of the page, which is asked for before this one.
      void Promise.resolve().then(() => setTimeout(() => (heard.isUntold = false)));
    };
    (sheet as Element & { renew(): void }).renew();
    void (sheet as Element & { result: unknown }).result;
  }
  return plans.heard.isWaiting || plans.heard.isUntold;
};

/** Once every sheet is drawn, every plan made and nothing changes any more; batting that is `spoilt` then gets a width that it cannot take. */
export const settle = async (page: Document = document, spoilt = true): Promise<void> => {
  type Sheet = HTMLElement & { result: unknown; updateComplete: Promise<boolean> };
  const sheets = [...page.querySelectorAll<Sheet>('*')].filter((at) => 'updateComplete' in at);
  const rested = async (): Promise<void> => {
    for (let before = 'none'; ;) {
      for (const sheet of sheets) while (!(await sheet.updateComplete));
      const now = JSON.stringify(sheets.map((at) => at.result ?? ''));
      if (now === before && !sheets.some(isPlanning)) return;
      before = now;
      await new Promise((done) => setTimeout(done));
    }
  };
  await rested();
  if (!spoilt) return;
  page.querySelector('quilt-batting')?.setAttribute('width', 'wide');
  await rested();
};

/** The same as code for a page that is driven from outside. */
export const settling = (spoilt: boolean): string =>
  `((isPlanning) => (${settle.toString()})(document, ${spoilt}))(${isPlanning.toString()})`;

/** What a reader reads, and what outside code gets. */
export const readingOf = (page: Document = document): Reading => {
  const sheets = [...page.querySelectorAll('*')].filter((at) => at.shadowRoot && 'result' in at);
  const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
  /** Without the announcement for a screen reader, which comes a second after the last key or plan. */
  const shown = (at: HTMLElement): string => {
    const text = at.innerText.replace(at.querySelector<HTMLElement>('.unseen')?.innerText ?? '', '');
    // Firefox leaves out the space where a line ends before a button.
    return [...at.querySelectorAll('button')].reduce(
      (words, { innerText }) => words.replace(innerText, ` ${innerText} `),
      text,
    );
  };
  return {
    words: sheets.flatMap((sheet) =>
      [
        ...sheet.shadowRoot!.querySelectorAll<HTMLElement & { value?: string }>(
          'p, tbody th, .how, [part=list] td, caption, [data-row]',
        ),
      ].map((at) => plain(at.matches('input, select, textarea') ? at.value! : shown(at))),
    ),
    results: sheets.map((sheet) => JSON.stringify((sheet as unknown as { result: unknown }).result)),
  };
};

/** Where something is cut off, runs out of the sheet or the window, or is too small: a line for each. */
export const misfits = (page: Document = document): string[] => {
  const view = page.defaultView!;
  const found: string[] = [];
  const named = (at: Element): string =>
    `${((at.getRootNode() as ShadowRoot).host ?? at).localName} ${at.localName}.${at.className} ${at.id} “${at.textContent.trim().slice(0, 30)}”`;
  if (page.documentElement.scrollWidth > view.innerWidth)
    found.push(`the page is ${page.documentElement.scrollWidth} px wide`);
  /** How far the content of a row or a cell sticks out of it. Firefox counts the padding too. */
  const overhang = (at: Element): number => {
    const inside = page.createRange();
    inside.selectNodeContents(at);
    const { height, bottom } = inside.getBoundingClientRect();
    // What is empty has no place of its own.
    return height ? bottom - at.getBoundingClientRect().bottom : 0;
  };
  const hosts = [...page.querySelectorAll<HTMLElement>('*')].filter((at) => at.shadowRoot && 'result' in at);
  for (const host of hosts) {
    const outer = host.getBoundingClientRect();
    const size = parseFloat(view.getComputedStyle(host).fontSize);
    if (outer.width < 200) found.push(`${named(host)} is ${outer.width} px wide`);
    for (const at of host.shadowRoot!.querySelectorAll<HTMLElement>('section *:not(svg *):not(option)')) {
      // An announcement that only a screen reader reads is clipped on purpose, and comes a second after the last key.
      if (!at.checkVisibility() || at.matches('.unseen') || (at.matches('[role=status]') && !at.textContent))
        continue;
      const { left, right, height } = at.getBoundingClientRect();
      // A block's chart that is wider than its column is rolled sideways, in a box of its own.
      const rolled = at.closest('.chart');
      const isRolled = rolled && view.getComputedStyle(rolled).overflowX === 'auto';
      if ((left < outer.left - 1 || right > outer.right + 1) && !(isRolled && at !== rolled))
        found.push(`${named(at)} runs out of its sheet`);
      const isLine = view.getComputedStyle(at).display === 'inline';
      // From right to left, Firefox takes an empty cell with a hint in it for twice as wide as it is.
      const isEmpty = at.matches('input') && !(at as HTMLInputElement).value;
      if (!isLine && at.scrollWidth > at.clientWidth + 1 && !at.matches('select') && !isRolled && !isEmpty)
        found.push(`${named(at)} is cut off: ${at.scrollWidth} > ${at.clientWidth}`);
      const below = at.matches('tr, th, td') ? overhang(at) : at.scrollHeight - at.clientHeight;
      // A patch of several rows reaches into the rows below.
      const isTall = at.matches('tr:has(> [rowspan]:not([rowspan="1"]))');
      if (!isLine && below > 2 && !isTall && !at.matches('select, textarea, :has(textarea)'))
        found.push(`${named(at)} is cut off below, by ${below} px`);
      if (parseFloat(view.getComputedStyle(at).fontSize) < size * 0.7)
        found.push(
          `${named(at)} is small: ${view.getComputedStyle(at).fontSize} where the page has ${size}px`,
        );
      if (at.matches('input, select, button') && height < 24 && !view.matchMedia('print').matches)
        found.push(`${named(at)} is ${height} px high`);
    }
  }
  return [...new Set(found)];
};

/** How many places axe looked at, and how many of them it finds fault with. It does not say where they are, which takes it long. */
interface Counted {
  passes: number;
  violations: number;
}
type Rule = Record<keyof Counted, unknown[]>;

/** What axe finds on the page, or only these of its rules: a line for each finding. */
export const axeFindings = async (
  page: Document = document,
  { rules, least = 20 }: { rules?: string[]; least?: number } = {},
): Promise<string[]> => {
  const wishes: RunOptions = { iframes: false, ...(rules && { runOnly: rules }) };
  const { axe } = page.defaultView as unknown as {
    axe: {
      run(at: Document, options: RunOptions): Promise<AxeResults>;
      run(at: Document, options: object): Promise<Counted>;
    };
  };
  const reporter = (all: Rule[], _: unknown, done: (counted: Counted) => void): void => {
    const count = (of: keyof Counted): number => all.flatMap((rule) => rule[of]).length;
    done({ passes: count('passes'), violations: count('violations') });
  };
  const counted: Counted = await axe.run(page, { ...wishes, reporter } as object);
  if (counted.passes < least) return ['axe looked at next to nothing'];
  if (counted.violations === 0) return [];
  const { violations } = await axe.run(page, wishes);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html}\n${failureSummary}`),
  );
};

/** Everything a reader can set off: typing, folding, choosing, copying, the file, the print; but for one button. */
export const useAll = async (page: Document = document, spared = ''): Promise<void> => {
  const sheets = [...page.querySelectorAll<HTMLElement & { updateComplete: Promise<boolean> }>('*')].filter(
    (at) => 'result' in at,
  );
  for (const sheet of sheets) {
    const root = sheet.shadowRoot!;
    const input = root.querySelector<HTMLInputElement>('input[type=text]')!;
    sheet.focus();
    input.value = `${input.value} `;
    input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    await sheet.updateComplete;
    for (const button of root.querySelectorAll('button')) if (button.innerText !== spared) button.click();
    await sheet.updateComplete;
  }
  // What a press sets off is at hand after a few turns of the page's own.
  for (let turn = 0; turn < 20; turn++) await new Promise((done) => setTimeout(done));
};

/** What the browser stores, and the new names on the window since the scripts ran. */
export const keptBy = async (page: Document = document): Promise<Record<string, unknown>> => {
  const { names, localStorage, sessionStorage, caches, indexedDB } = page.defaultView as unknown as {
    names: Set<string>;
  } & typeof globalThis;
  return {
    cookies: page.cookie,
    stored: localStorage.length + sessionStorage.length + (await caches.keys()).length,
    databases: (await indexedDB.databases()).length,
    // The window names frames for printing by number.
    globals: Object.getOwnPropertyNames(page.defaultView).filter(
      (name) => !names.has(name) && !/^\d+$/.test(name),
    ),
  };
};
