import type { Framed } from './frame.js';
import { settle } from './reading.js';

// Layout shifts are counted by Chromium alone: elsewhere the words below are looked at on every frame that is shown.

interface Shown {
  /** Where the words below stand; nothing while they are not there. */
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

/** Each place where the words below were shown until the page came to rest, and whether words were before the script. */
export const placesIn = async (framed: Framed): Promise<{ places: string[]; isShownBefore: boolean }> => {
  await settle(framed.page, false);
  await shownTwice(framed);
  const { shown } = framed.window as unknown as { shown: Shown[] };
  return {
    places: [...new Set(shown.flatMap(({ place }) => place ?? []))],
    isShownBefore: shown.some(({ isDefined }) => !isDefined),
  };
};
