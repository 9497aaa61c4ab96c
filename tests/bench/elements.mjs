import { readFileSync } from 'node:fs';

/** Each calculator as an author writes it in a page of its own. */
export const ALONE = {
  backing: '<quilt-backing width="58" length="70" price="12"></quilt-backing>',
  batting: '<quilt-batting width="58" length="70"></quilt-batting>',
  binding: '<quilt-binding width="58" length="70" price="12"></quilt-binding>',
  block: '<quilt-block block="12" count="20" chart="A B A; B A B; A B A"></quilt-block>',
  borders: '<quilt-borders width="58" length="70" borders="2, 4 1/2" corners="sides-first"></quilt-borders>',
  cutting:
    '<quilt-cutting list="A | square | 3 1/2 in | 20&#10;A | corner | 2 1/2 in | 8&#10;B | strip | 2 x 6 1/2 in | 12"></quilt-cutting>',
  top: '<quilt-top block="12" across="4" down="5" sashing="2" cornerstones frame></quilt-top>',
};

/** A whole quilt: seven parts, five fabrics, kits. */
export const WORKSHEET = `<quilt-worksheet currency="EUR" kits="24">
  <quilt-fabric letter="A" name="Wet Sand" price="13.50" swatch="#d9c7a3"></quilt-fabric>
  <quilt-fabric letter="B" name="Harbour" price="13.50" swatch="#3f6f86"></quilt-fabric>
  <quilt-fabric letter="C" name="Gull Grey" price="12.00" swatch="#b9bdc1"></quilt-fabric>
  <quilt-fabric letter="D" name="Slate Roof" price="14.25" swatch="#48505c"></quilt-fabric>
  <quilt-fabric letter="E" name="Long Horizon" price="19.80" fabric-width="106" swatch="#8fa9b5"></quilt-fabric>
  <quilt-cutting sheet="fat-quarter" price="3.60" list="A | half-square triangles | 3 in finished | 160
A | corner | 3 1/2 in | 80
B | half-square triangles | 3 in finished | 160
B | middle | 6 1/2 in | 20"></quilt-cutting>
  <quilt-cutting list="C | label | 5 x 7 in | 1
C | hanging sleeve | 9 x 35 in | 2"></quilt-cutting>
  <quilt-top block="12" across="4" down="5" sashing="2" cornerstones frame fabric="C D"></quilt-top>
  <quilt-borders borders="2, 5" corners="sides-first" fabric="D B"></quilt-borders>
  <quilt-binding fabric="D"></quilt-binding>
  <quilt-backing fabric="E"></quilt-backing>
  <quilt-batting packages="small 60 x 60 @ 18; middle 72 x 90 @ 27; large 120 x 130 @ 38.50"></quilt-batting>
</quilt-worksheet>`;

const DEMO = readFileSync(new URL('../../demo/sew-along.html', import.meta.url), 'utf8');

/** The sew-along of the demo: eight kinds of block, fifteen fabrics. */
export const SEW_ALONG = /<quilt-worksheet[^]*<\/quilt-worksheet>/.exec(DEMO)[0];
