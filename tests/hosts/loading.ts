import { blog, reserved, TABLE, WORKSHEET, WRITTEN } from './quilt-parts.js';

export const BARE = WRITTEN['quilt-backing']!;
export const FALLBACK = BARE.replace('></', '><p>Buy 3 3/4 yd of cloth 40 in wide.</p><p>Two panels.</p></');
export const WHOLE = { 'without fallback': BARE, 'with fallback': FALLBACK };
const WITH_CHILDREN = { 'a cut list in a table': TABLE, 'a worksheet': WORKSHEET };

/** A page for each way to load that DEVELOPERS.md gives for a page on which nothing jumps, by the addresses of its scripts. */
export const waysToLoad = ({
  classic,
  module,
}: {
  classic: string;
  module: string;
}): [way: string, what: string, html: string, isShownBefore: boolean][] => {
  const head = `<script src="${classic}"></script>`;
  return [
    ...Object.entries({ ...WHOLE, ...WITH_CHILDREN }).flatMap(([what, written]) => [
      [
        'a classic script that holds the painting back',
        what,
        blog(written, { head: `<script defer blocking="render" src="${classic}"></script>` }),
        false,
      ],
      [
        'a module that holds the painting back',
        what,
        blog(written, { head: `<script type="module" blocking="render" src="${module}"></script>` }),
        false,
      ],
      [
        'a box of fixed height, however late the script',
        what,
        blog(written, {
          head: reserved('quilt-backing', 'quilt-cutting', 'quilt-worksheet'),
          foot: `<script type="module" src="${module}"></script>`,
        }),
        true,
      ],
    ]),
    ...Object.entries(WHOLE).flatMap(([what, written]) => [
      ['a plain script in the head', what, blog(written, { head }), false],
      ['a plain script before the element', what, blog(written, { before: head }), true],
    ]),
  ] as [string, string, string, boolean][];
};
