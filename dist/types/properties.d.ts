// Written by the build, from custom-elements.json.
import type { QuiltBacking } from './elements/backing/backing.js';
import type { QuiltBatting } from './elements/batting/batting.js';
import type { QuiltBinding } from './elements/binding/binding.js';
import type { QuiltBlock } from './elements/block/block.js';
import type { QuiltBorders } from './elements/borders/borders.js';
import type { QuiltCutting } from './elements/cutting/cutting.js';
import type { QuiltFabric } from './elements/fabric/fabric.js';
import type { QuiltSleeve } from './elements/sleeve/sleeve.js';
import type { QuiltTop } from './elements/top/top.js';
import type { QuiltWorksheet } from './elements/worksheet/worksheet.js';

/** What can be set on `<quilt-backing>`. */
export interface QuiltBackingProperties {
  /** Cloth added on each side of the quilt. A length. Default `4 in`, or `10 cm` in metric. */
  overage?: QuiltBacking['overage'] | undefined;
  /** The print's repeat along the cloth, if panels have to match. A length. Default 0, nothing to match. */
  repeat?: QuiltBacking['repeat'] | undefined;
  /** The print has a right way up, so panels may not be turned. Default false. */
  oneWay?: QuiltBacking['oneWay'] | undefined;
  /** A pieced strip may take the place of the last panel: less cloth, more seams. Default false. */
  piecedStrip?: QuiltBacking['piecedStrip'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltBacking['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltBacking['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltBacking['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltBacking['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltBacking['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltBacking['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltBacking['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltBacking['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltBacking['flow'] | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  width?: QuiltBacking['width'] | undefined;
  /** Finished length. A length as people write it; a number alone is in `units`. */
  length?: QuiltBacking['length'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltBacking['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltBacking['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltBacking['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltBacking['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltBacking['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltBacking['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltBacking['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltBacking['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltBacking['disabled'] | undefined;
}

/** What can be set on `<quilt-batting>`. */
export interface QuiltBattingProperties {
  /** Batting added on each side of the quilt. A length. Default `4 in`, or `10 cm` in metric. */
  overage?: QuiltBatting['overage'] | undefined;
  /** The shop's own packages: `small 40 x 50 @ 12.50; large 90 x 100 @ 29`. Default: the usual sizes. */
  packages?: QuiltBatting['packages'] | undefined;
  /** Widths of the rolls to buy from, in place of a package: `96` or `90, 108`. Default none. */
  roll?: QuiltBatting['roll'] | undefined;
  /** The bed the quilt is for: `twin`, `queen` …, or its size in centimetres, `140x200`. Default `none`: `width` and `length` are given. */
  bed?: QuiltBatting['bed'] | undefined;
  /** How far the quilt hangs over the mattress at both sides and the foot. A length. Default `12 in`, or `30 cm` in metric. */
  drop?: QuiltBatting['drop'] | undefined;
  /** Length to tuck under the pillows. Default 0. */
  tuck?: QuiltBatting['tuck'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltBatting['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltBatting['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltBatting['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltBatting['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltBatting['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltBatting['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltBatting['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltBatting['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltBatting['flow'] | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  width?: QuiltBatting['width'] | undefined;
  /** Finished length. A length as people write it; a number alone is in `units`. */
  length?: QuiltBatting['length'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltBatting['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltBatting['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltBatting['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltBatting['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltBatting['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltBatting['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltBatting['disabled'] | undefined;
}

/** What can be set on `<quilt-binding>`. */
export interface QuiltBindingProperties {
  /** The distance round a curved or scalloped edge, as you measured it. A length. Default: from the sides. */
  perimeter?: QuiltBinding['perimeter'] | undefined;
  /** Added for the mitred corners and the closing tails. A length. Default `10 in`, or `25 cm` in metric. */
  allowance?: QuiltBinding['allowance'] | undefined;
  /** What the strips are cut to. A length. Default `2 1/2 in` (`6.5 cm` in metric), or reckoned from `finished`. */
  stripWidth?: QuiltBinding['stripWidth'] | undefined;
  /** The width that shows on the front. A length; used if there is no `strip-width`. Default none. */
  finished?: QuiltBinding['finished'] | undefined;
  /** How thick the quilt is, for a strip reckoned from `finished`. A length. Default `1/8 in`, or `3 mm` in metric. */
  thickness?: QuiltBinding['thickness'] | undefined;
  /** `double` or `single`. Default `double`. */
  fold?: QuiltBinding['fold'] | undefined;
  /** `straight` (across the cloth) or `bias`. Default `straight`. */
  cut?: QuiltBinding['cut'] | undefined;
  /** How strips are joined: `diagonal` (at 45°) or `straight`. Default `diagonal`. */
  join?: QuiltBinding['join'] | undefined;
  /** The marks of the ruler, which cut sizes fall on: `1/8 in`, `1/16 in`, `1 mm`. Default `1/8 in`, or `1 mm` in metric. */
  mark?: QuiltBinding['mark'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltBinding['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltBinding['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltBinding['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltBinding['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltBinding['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltBinding['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltBinding['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltBinding['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltBinding['flow'] | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  width?: QuiltBinding['width'] | undefined;
  /** Finished length. A length as people write it; a number alone is in `units`. */
  length?: QuiltBinding['length'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltBinding['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltBinding['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltBinding['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltBinding['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltBinding['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltBinding['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltBinding['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltBinding['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltBinding['disabled'] | undefined;
}

/** What can be set on `<quilt-block>`. */
export interface QuiltBlockProperties {
  /** The chart: rows of cells, or text with a line for each row and `|` between the cells. `A` is a patch of one fabric, `A/B` and
`A\B` are half-square triangles, `A/B/C/D` quarter-square triangles clockwise from the top, `B A B` a goose, `B in A` a square in
a square. Default: the table inside the element. */
  chart?: QuiltBlock['chart'] | undefined;
  /** The block's finished side. A length. In a worksheet it follows the top's blocks. */
  block?: QuiltBlock['block'] | undefined;
  /** How many blocks, a whole number. If a worksheet has only one block, it fills all the places of the top. Default 1. */
  count?: QuiltBlock['count'] | undefined;
  /** In a worksheet: without a `count`, it fills the places of the top that the other blocks leave. Default false. */
  fills?: QuiltBlock['fills'] | undefined;
  /** How triangles are made. The first word is for half-square triangles, `two` or `eight` at a time, and the second for geese, `one`
or `four` at a time: `eight-four`. Or `strips`: rows of equal patches are cut across from strips that are sewn together.
Default `two-one`. */
  method?: QuiltBlock['method'] | undefined;
  /** What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: what the worksheet’s fabrics are bought in,
or cloth by length. */
  sheet?: QuiltBlock['sheet'] | undefined;
  /** The prints have a right way up, so pieces may not be turned. Default false. */
  oneWay?: QuiltBlock['oneWay'] | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  mark?: QuiltBlock['mark'] | undefined;
  /** The week of a sew-along in which it is made, a whole number. Default none. */
  week?: QuiltBlock['week'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltBlock['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltBlock['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltBlock['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltBlock['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltBlock['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltBlock['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltBlock['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltBlock['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltBlock['flow'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltBlock['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltBlock['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltBlock['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltBlock['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltBlock['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltBlock['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltBlock['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltBlock['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltBlock['disabled'] | undefined;
}

/** What can be set on `<quilt-borders>`. */
export interface QuiltBordersProperties {
  /** Finished widths from the inside out: `2, 4 1/2`. Required unless `target` is given. */
  borders?: QuiltBorders['borders'] | undefined;
  /** `sides-first`, `ends-first`, `squares` or `mitred`; one for all, or one per border with commas. Default `sides-first`. */
  corners?: QuiltBorders['corners'] | undefined;
  /** `across` (strips from selvage to selvage) or `along` (unpieced, beside the selvage). Default `across`. */
  grain?: QuiltBorders['grain'] | undefined;
  /** The size wanted: `60 x 80`. One more border makes up what is missing. Default none. */
  target?: QuiltBorders['target'] | undefined;
  /** How strips are joined: `diagonal` (at 45°) or `straight`. Default `diagonal`. */
  join?: QuiltBorders['join'] | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  mark?: QuiltBorders['mark'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltBorders['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltBorders['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltBorders['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltBorders['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltBorders['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltBorders['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltBorders['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltBorders['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltBorders['flow'] | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  width?: QuiltBorders['width'] | undefined;
  /** Finished length. A length as people write it; a number alone is in `units`. */
  length?: QuiltBorders['length'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltBorders['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltBorders['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltBorders['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltBorders['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltBorders['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltBorders['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltBorders['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltBorders['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltBorders['disabled'] | undefined;
}

/** What can be set on `<quilt-cutting>`. */
export interface QuiltCuttingProperties {
  /** The cut list: rows of cells, or text with a line for each piece. Default: the table inside the element. */
  list?: QuiltCutting['list'] | undefined;
  /** What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: what the worksheet’s fabrics are bought in,
or cloth by length. */
  sheet?: QuiltCutting['sheet'] | undefined;
  /** The print has a right way up, so pieces may not be turned. Default false. */
  oneWay?: QuiltCutting['oneWay'] | undefined;
  /** How long the ruler is. A length. Default `24 in`, or `60 cm` in metric. */
  ruler?: QuiltCutting['ruler'] | undefined;
  /** The cutting mat. Default `24 x 36 in`, or `60 x 90 cm` in metric. */
  mat?: QuiltCutting['mat'] | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  mark?: QuiltCutting['mark'] | undefined;
  /** The week of a sew-along in which it is cut, a whole number. Default none. */
  week?: QuiltCutting['week'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltCutting['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltCutting['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltCutting['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltCutting['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltCutting['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltCutting['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltCutting['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltCutting['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltCutting['flow'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltCutting['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltCutting['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltCutting['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltCutting['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltCutting['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltCutting['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltCutting['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltCutting['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltCutting['disabled'] | undefined;
}

/** What can be set on `<quilt-fabric>`. */
export interface QuiltFabricProperties {
  /** The letter that parts name it by: `A`. Required. */
  letter?: QuiltFabric['letter'] | undefined;
  /** What the shop calls it. Default none. */
  name?: QuiltFabric['name'] | undefined;
  /** Its usable width, selvages off. A length. Default: the worksheet's. */
  fabricWidth?: QuiltFabric['fabricWidth'] | undefined;
  /** What it is bought in: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Cut lists and blocks that name no sheet of their own
then plan its pieces on these. Default: cloth by length. */
  sheet?: QuiltFabric['sheet'] | undefined;
  /** Price of one yard or metre; with `sheet`, of one sheet. Default none. */
  price?: QuiltFabric['price'] | undefined;
  /** A colour, or the address of a picture, for the fabric key: one that begins with `https://`, `/`, `./`, `../`, `blob:` or
`data:image/`, or ends like `.png`. Default none: an empty box to tape a swatch into. */
  swatch?: QuiltFabric['swatch'] | undefined;
  /** What the reader has of it already: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these with commas between. If the
attribute is there, even empty, the shopping list has a cell for it. What the reader writes in the cell is in this property, and
the fabric fires `input` and `change`, so that a page can keep it. Nothing is stored. Default none. */
  atHand?: QuiltFabric['atHand'] | undefined;
}

/** What can be set on `<quilt-sleeve>`. */
export interface QuiltSleeveProperties {
  /** What the strip is cut to. A length. Default `8 1/2 in`, or `22 cm` in metric. */
  stripWidth?: QuiltSleeve['stripWidth'] | undefined;
  /** How far the sleeve ends short of each side of the quilt. A length. Default `1 in`, or `2.5 cm` in metric. */
  short?: QuiltSleeve['short'] | undefined;
  /** Each of the two turns of a hem. A length. Default `1/2 in`, or `1.5 cm` in metric. */
  hem?: QuiltSleeve['hem'] | undefined;
  /** A label for the back: its finished size, like `4 x 6`. For a label of another fabric, write both letters: `fabric="A B"`, the
sleeve’s first. Default none. */
  label?: QuiltSleeve['label'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltSleeve['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltSleeve['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltSleeve['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltSleeve['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltSleeve['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltSleeve['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltSleeve['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltSleeve['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltSleeve['flow'] | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  width?: QuiltSleeve['width'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltSleeve['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltSleeve['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltSleeve['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltSleeve['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltSleeve['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltSleeve['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltSleeve['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltSleeve['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltSleeve['disabled'] | undefined;
}

/** What can be set on `<quilt-top>`. */
export interface QuiltTopProperties {
  /** A block's finished side. A length. Required. */
  block?: QuiltTop['block'] | undefined;
  /** Blocks across, a whole number. Required. */
  across?: QuiltTop['across'] | undefined;
  /** Blocks down, a whole number. Required. */
  down?: QuiltTop['down'] | undefined;
  /** Finished width of the sashing between blocks. A length. Default 0, none. */
  sashing?: QuiltTop['sashing'] | undefined;
  /** Squares where sashing crosses. Default false. */
  cornerstones?: QuiltTop['cornerstones'] | undefined;
  /** Sashing round the outside too. Default false. */
  frame?: QuiltTop['frame'] | undefined;
  /** `straight` or `on-point`. Default `straight`. */
  set?: QuiltTop['set'] | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  mark?: QuiltTop['mark'] | undefined;
  /** The bed the quilt is for: `twin`, `queen` …, or its size in centimetres, `140x200`. The sheet then shows the numbers of blocks that come closest to it. Default `none`. */
  bed?: QuiltTop['bed'] | undefined;
  /** How far the quilt hangs over the mattress at both sides and the foot. A length. Default `12 in`, or `30 cm` in metric. */
  drop?: QuiltTop['drop'] | undefined;
  /** Length to tuck under the pillows. Default 0. */
  tuck?: QuiltTop['tuck'] | undefined;
  /** The size that is wanted, in place of a bed: `60 x 80`. Default none. */
  target?: QuiltTop['target'] | undefined;
  /** All borders together, on one side: they are part of the wanted size. A length. Default 0. */
  border?: QuiltTop['border'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltTop['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltTop['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltTop['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltTop['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltTop['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltTop['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltTop['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltTop['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltTop['flow'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltTop['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltTop['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltTop['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltTop['increment'] | undefined;
  /** Price of one yard or metre, with its currency or without: `12.50`, `12.50 EUR`. Default none. */
  price?: QuiltTop['price'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltTop['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltTop['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltTop['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltTop['disabled'] | undefined;
}

/** What can be set on `<quilt-worksheet>`. */
export interface QuiltWorksheetProperties {
  /** How many kits to cut, for a shop. Default none. */
  kits?: QuiltWorksheet['kits'] | undefined;
  /** How much cloth a bolt holds. A length. Default `15 yd`, or `13.5 m` in metric. */
  bolt?: QuiltWorksheet['bolt'] | undefined;
  /** The shopping list has a cell for every fabric, where the reader writes what she has of it. Default false. */
  atHand?: QuiltWorksheet['atHand'] | undefined;
  /** Whether the working shows at first: `open`, or `folded` until a reader presses “Show the working”. Default `folded`. */
  working?: QuiltWorksheet['working'] | undefined;
  /** The unit of a number alone, and of the answers: `in` or `cm`. Default `in`. */
  units?: QuiltWorksheet['units'] | undefined;
  /** The unit that the reader switched to, `in` or `cm`. Default: `units`. */
  shown?: QuiltWorksheet['shown'] | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  lock?: QuiltWorksheet['lock'] | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  fabric?: QuiltWorksheet['fabric'] | undefined;
  /** The shop's stock: a length (`6 yd`, `5 m`), or a number of what is sold: yards, metres, packages, fat quarters. If the amount to
buy is larger, a sentence says so, and a form is not sent. Default none. */
  max?: QuiltWorksheet['max'] | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  measured?: QuiltWorksheet['measured'] | undefined;
  /** Your own words for inputs and rows, by the id of the row in `result.working`: `{ panels: 'Lengths of cloth' }`. Default: the
words of the language. */
  words?: QuiltWorksheet['words'] | undefined;
  /** The values that the worksheet around it gives. An attribute of its own counts before them. Set by the worksheet. */
  flow?: QuiltWorksheet['flow'] | undefined;
  /** Finished width. A length as people write it; a number alone is in `units`. */
  width?: QuiltWorksheet['width'] | undefined;
  /** Finished length. A length as people write it; a number alone is in `units`. */
  length?: QuiltWorksheet['length'] | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`, or `105 cm` in metric. */
  fabricWidth?: QuiltWorksheet['fabricWidth'] | undefined;
  /** Seam allowance. The default is the calculator's. */
  seam?: QuiltWorksheet['seam'] | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  shrinkage?: QuiltWorksheet['shrinkage'] | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`, `25 cm`, `50 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  increment?: QuiltWorksheet['increment'] | undefined;
  /** Currency, ISO 4217: `EUR`. Default: the one that the price names. If it names none, prices are numbers alone. */
  currency?: QuiltWorksheet['currency'] | undefined;
  /** The form field's name; its value is the amount to buy. Default none. */
  name?: QuiltWorksheet['name'] | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  required?: QuiltWorksheet['required'] | undefined;
  /** No cell can be changed, and a form sends nothing of it. Default false. */
  disabled?: QuiltWorksheet['disabled'] | undefined;
}
