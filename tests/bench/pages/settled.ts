import type { LitElement } from 'lit';

/** One of ours as the bench sees it; a plain table has no result. */
export type Sheet = LitElement & { result?: { errors?: { message: string }[] } };

/** Those that are on the screen, whole or in part. A worksheet holds its parts, so what counts is its own list. */
export const inSight = (sheets: Sheet[]): Sheet[] =>
  sheets.filter((sheet) => {
    const box = sheet.shadowRoot?.querySelector('section') ?? sheet;
    const { top, bottom } = box.getBoundingClientRect();
    return bottom > 0 && top < innerHeight;
  });

/** Once nothing that was started in this turn is left to draw. */
export const settled = async (sheets: Sheet[]): Promise<void> => {
  do {
    await Promise.all(sheets.map(({ updateComplete }) => updateComplete));
    // What a drawing told the elements around it may ask for another one.
    for (let turns = 0; turns < 3; turns += 1) await Promise.resolve();
  } while (sheets.some(({ isUpdatePending }) => isUpdatePending));
};

/** Makes the browser lay the page out now. */
export const layOut = (): number => document.body.getBoundingClientRect().height;

export const rest = (time: number): Promise<void> => new Promise((done) => setTimeout(done, time));

/** A frame of the page, and what it was drawn for is over. */
export const framed = (): Promise<void> =>
  new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

/** Whether a plan is still being made in the background. */
export const isPlanning = (sheets: Sheet[]): boolean =>
  sheets.some(({ result }) => JSON.stringify(result?.errors ?? '').includes('being planned'));

/** Once no plan is being made any more and what came of it is drawn. */
export const planned = async (sheets: Sheet[]): Promise<void> => {
  while (isPlanning(sheets)) await rest(0);
  await settled(sheets);
};

/** Once every element of the page is known to it. */
export const allDefined = async (): Promise<void> => {
  const unknown = [...document.querySelectorAll(':not(:defined)')].map(({ localName }) => localName);
  await Promise.all(unknown.map((name) => customElements.whenDefined(name)));
};

/** Ours and plain tables. */
export const sheetsIn = (page: Document): Sheet[] =>
  [...page.querySelectorAll<Sheet>('*')].filter(
    (element) => element.localName === 'plain-table' || 'calculator' in element,
  );
