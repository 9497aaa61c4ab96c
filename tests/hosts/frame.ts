import { axeFindings } from './reading.js';

/** A whole page in a frame of the test's page, and what went wrong on it. */
export interface Framed {
  window: Window & typeof globalThis;
  page: Document;
  faults: string[];
}

/** Opens an address of the site, or a page that is this HTML, once it has loaded; it is gone after the test. */
export const openFrame = async (
  shown: { src: string } | { srcdoc: string },
  { width = 1280, height = 900 } = {},
): Promise<Framed> => {
  // Without scroll bars a frame is as wide inside as a telephone of that width.
  const frame = Object.assign(document.createElement('iframe'), { ...shown, scrolling: 'no' });
  frame.style.cssText = `inline-size: ${width}px; block-size: ${height}px; border: 0; position: absolute; inset: 0`;
  return shownBy(frame, () => document.body.append(frame));
};

/** The page in a frame that this makes it load. */
const shownBy = async (frame: HTMLIFrameElement, go: () => void): Promise<Framed> => {
  const loaded = new Promise((done) => frame.addEventListener('load', done, { once: true }));
  go();
  await loaded;
  const window = frame.contentWindow as Framed['window'];
  const { faults } = window as unknown as { faults: string[] };
  return { window, page: frame.contentDocument!, faults };
};

/** The page that a frame goes to when this is done. */
export const goTo = ({ window }: Framed, go: () => void): Promise<Framed> =>
  shownBy(window.frameElement as HTMLIFrameElement, go);

/** Written into a page before anything else. */
export const LISTENING = '<script src="/tests/hosts/listening.js"></script>';

/** What axe finds on a page in a frame. */
export const findingsIn = async (
  { page }: Framed,
  wishes: Parameters<typeof axeFindings>[1] = {},
): Promise<string[]> => {
  const script = Object.assign(page.createElement('script'), { src: '/node_modules/axe-core/axe.min.js' });
  const loaded = new Promise((done) => script.addEventListener('load', done, { once: true }));
  page.head.append(script);
  await loaded;
  return axeFindings(page, wishes);
};

afterEach(() => document.querySelectorAll('iframe').forEach((frame) => frame.remove()));
