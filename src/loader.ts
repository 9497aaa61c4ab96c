/**
 * One small script for a page that may have any of the elements: it looks which of them are there, also those that come
 * later, and loads what they need and nothing else.
 */

/** The chunks that each element's script imports, by its tag: the build writes them here. */
declare const CHUNKS: Record<string, string[]>;

const waiting = new Set(Object.keys(CHUNKS));

/**
 * Asks for a script and for its chunks at once, so that none waits until another has come. It imports them: a page whose policy asks
 * for a nonce lets its scripts import, but would stop a `<link rel="modulepreload">` that has none.
 */
const load = (tag: string): void => {
  waiting.delete(tag);
  // A page's own script may have brought it.
  if (customElements.get(tag)) return;
  const { href, search } = new URL(import.meta.url);
  // What goes wrong with a chunk goes wrong with the script too, and is told once.
  for (const chunk of CHUNKS[tag] ?? []) import(new URL(chunk, href).href).catch(() => undefined);
  void import(new URL(`${tag}.js${search}`, href).href);
};

const lookIn = (place: ParentNode): void => {
  for (const tag of waiting)
    if (place.querySelector(tag) || (place instanceof Element && place.localName === tag)) load(tag);
};

const watch = new MutationObserver((changes) => {
  for (const { addedNodes } of changes)
    for (const node of addedNodes) if (node instanceof Element) lookIn(node);
  if (!waiting.size) watch.disconnect();
});
watch.observe(document, { childList: true, subtree: true });
lookIn(document);

export {};
