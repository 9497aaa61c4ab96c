import type { Framed } from './frame.js';
import { settle } from './reading.js';

// Only Chromium counts layout shifts. In the other engines we look at the words below the element in every frame.

interface Shown {
  /** The place of the words below, or undefined while they are not there. */
  place: string | undefined;
  /** Whether the script has come. */
  isDefined: boolean;
}

const watch = (): void => {
  const shown: Shown[] = [];
  Object.assign(window, { shown });
  const look = (): void => {
    const { x, y, width, height } = document.querySelector('#after')?.getBoundingClientRect() ?? {};
    const place = y === undefined ? undefined : [x, y, width, height].join(' ');
    if (document.querySelector('h1')) shown.push({ place, isDefined: !!customElements.get('quilt-backing') });
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
};

/** Written into a page before anything else that is seen. */
export const WATCHING = `<script>(${watch.toString()})()</script>`;

/** Whether words of a page have been shown. */
export const isShown = (window: Window): boolean =>
  ((window as unknown as { shown?: Shown[] }).shown ?? []).length > 0;

/** Until a page in a frame has been shown twice more. */
export const shownTwice = ({ window }: Framed): Promise<unknown> =>
  new Promise((done) => window.requestAnimationFrame(() => window.requestAnimationFrame(done)));

/** Every place of the words below until the page is at rest, and whether there were words before the script. */
export const placesIn = async (framed: Framed): Promise<{ places: string[]; isShownBefore: boolean }> => {
  await settle(framed.page, false);
  await shownTwice(framed);
  const { shown } = framed.window as unknown as { shown: Shown[] };
  return {
    places: [...new Set(shown.flatMap(({ place }) => place ?? []))],
    isShownBefore: shown.some(({ isDefined }) => !isDefined),
  };
};
