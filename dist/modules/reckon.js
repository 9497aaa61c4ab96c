import { backing as backing$1 } from './calculators/backing/backing.js';
import { batting as batting$1 } from './calculators/batting/batting.js';
import { binding as binding$1 } from './calculators/binding/binding.js';
import { block as block$1 } from './calculators/block/block.js';
import { borders as borders$1 } from './calculators/borders/borders.js';
import { cutting as cutting$1 } from './calculators/cutting/cutting.js';
import { sleeve as sleeve$1 } from './calculators/sleeve/sleeve.js';
import { top as top$1 } from './calculators/top/top.js';
import { reckonPlain } from './workbook/plain.js';
import { worksheetFields } from './workbook/shape.js';
import { backing } from './words/en/backing.js';
import { batting } from './words/en/batting.js';
import { binding } from './words/en/binding.js';
import { block } from './words/en/block.js';
import { borders } from './words/en/borders.js';
import { cutting } from './words/en/cutting.js';
import { sleeve } from './words/en/sleeve.js';
import { top } from './words/en/top.js';
import { worksheet } from './words/en/worksheet.js';
import { headless } from './words/headless.js';
export { learn } from './words/languages.js';

/** The arithmetic alone, without a page: plain input, plain result. */
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth. The one with the least cloth comes first, then the one
 * with the fewest seams. Layouts with a pieced strip come last, unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
const reckonBacking = /* @__PURE__ */ headless(backing$1, backing);
/**
 * Batting for a quilt, from a package or from the roll. Also the size of a quilt for a bed. Impossible inputs give `errors`, never
 * an exception.
 */
const reckonBatting = /* @__PURE__ */ headless(batting$1, batting);
/**
 * Cloth for a quilt's binding: strips across the cloth joined end to end, or squares for continuous bias; and the same
 * from fat quarters. Impossible inputs give `errors`, never an exception.
 */
const reckonBinding = /* @__PURE__ */ headless(binding$1, binding);
/**
 * One block of a quilt, as a chart of fabric letters: what to cut for so many of them, and the cloth of each fabric. Impossible
 * inputs give `errors`, never an exception.
 */
const reckonBlock = /* @__PURE__ */ headless(block$1, block);
/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
const reckonBorders = /* @__PURE__ */ headless(borders$1, borders);
/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
const reckonCutting = /* @__PURE__ */ headless(cutting$1, cutting);
/**
 * Cloth for the sleeve that a quilt hangs by: a strip as long as the quilt is wide, joined where the cloth is narrower.
 * Impossible inputs give `errors`, never an exception.
 */
const reckonSleeve = /* @__PURE__ */ headless(sleeve$1, sleeve);
/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth. The patches
 * of the blocks are not in it: they belong into a cut list.
 */
const reckonTop = /* @__PURE__ */ headless(top$1, top);
/**
 * One shopping list for all parts of a quilt. The parts of a fabric are added up before rounding, and planned together if that
 * saves cloth. The list has prices, and bolts if a shop cuts kits. A part whose fabric is not declared still gets a line.
 */
const reckonWorksheet = /* @__PURE__ */ headless({ name: 'worksheet', fields: worksheetFields, reckon: reckonPlain }, worksheet);

export { reckonBacking, reckonBatting, reckonBinding, reckonBlock, reckonBorders, reckonCutting, reckonSleeve, reckonTop, reckonWorksheet };
