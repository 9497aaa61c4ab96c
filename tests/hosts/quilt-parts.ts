/** One of each element as an author writes it, by its tag. */
export const WRITTEN: Record<string, string> = {
  'quilt-backing': '<quilt-backing width="58" length="70" overage="4" pieced-strip></quilt-backing>',
  'quilt-binding': '<quilt-binding width="58" length="70" finished="3/8" cut="bias"></quilt-binding>',
  'quilt-borders':
    '<quilt-borders width="58" length="70" borders="2, 4 1/2" corners="sides-first, squares"></quilt-borders>',
  'quilt-batting': '<quilt-batting bed="queen" drop="14"></quilt-batting>',
  'quilt-top':
    '<quilt-top block="12" across="4" down="5" sashing="2" cornerstones frame lang="fr"></quilt-top>',
  'quilt-cutting':
    '<quilt-cutting sheet="fat-quarter" list="Fabric; Piece; Cut size; How many&#10;A; square; 3 1/2 in; 48&#10;B; half-square triangles; 3 in finished; 24"></quilt-cutting>',
};

/** The same cut list as the table that an author writes in her post anyway. */
export const TABLE = `<quilt-cutting sheet="fat-quarter"><table>
  <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
  <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
  <tr><td>B</td><td>half-square triangles</td><td>3 in finished</td><td>24</td></tr>
</table></quilt-cutting>`;

export const WORKSHEET = `<quilt-worksheet fabric-width="42" currency="EUR">
  <quilt-fabric letter="A" name="Slate Roof" price="14.25"></quilt-fabric>
  <quilt-top block="12" across="4" down="5"></quilt-top>
  <quilt-borders borders="4" fabric="A"><p>Buy 7/8 yd for the borders.</p></quilt-borders>
  <quilt-binding fabric="A"></quilt-binding>
</quilt-worksheet>`;

/** A worksheet with a cut list in a table. */
export const BLOCKS = `<quilt-worksheet currency="EUR">
  <quilt-fabric letter="A" name="Wet Sand" price="13.50"></quilt-fabric>
  <quilt-fabric letter="B" name="Harbour" price="13.50"></quilt-fabric>
  ${TABLE.replace(' sheet="fat-quarter"', '')}
  <quilt-binding width="48" length="60" fabric="A"></quilt-binding>
</quilt-worksheet>`;

/** A whole quilt: two fabrics cut from fat quarters and from lengths, one wide, and parts in other markup. */
export const QUILT = `<quilt-worksheet currency="EUR">
  <quilt-fabric letter="A" name="Wet Sand" price="13.50" swatch="#d9c7a3"></quilt-fabric>
  <quilt-fabric letter="B" name="Harbour" price="13.50" swatch="#3f6f86"></quilt-fabric>
  <quilt-fabric letter="C" name="Long Horizon" price="19.80" fabric-width="106"></quilt-fabric>
  <quilt-cutting sheet="fat-quarter" price="3.60" list="A | square | 6 1/2 | 12"></quilt-cutting>
  <div><quilt-top block="12" across="4" down="5" sashing="2" cornerstones frame fabric="A B"></quilt-top></div>
  <details open><quilt-borders borders="2, 5" fabric="B A"></quilt-borders></details>
  <quilt-binding fabric="B"></quilt-binding>
  <quilt-backing fabric="C"></quilt-backing>
  <quilt-batting></quilt-batting>
</quilt-worksheet>`;

/** Keeps the room of these elements, as DEVELOPERS.md tells an author to. */
export const reserved = (...tags: string[]): string => `<style>
  @media screen { ${tags.join()} { display: block; block-size: 40rem; overflow: auto; } }
</style>`;

/** A blog's page: words above, the element, and words below it in view. */
export const blog = (
  element: string,
  { head = '', before = '', foot = '' }: { head?: string; before?: string; foot?: string } = {},
): string => `<!doctype html><html lang="en"><head><title>A post</title><link rel="icon" href="data:,">${head}</head>
<body><h1>A post</h1><p>Words above.</p>${before}${element}<p id="after">Words below.</p>${foot}</body></html>`;
