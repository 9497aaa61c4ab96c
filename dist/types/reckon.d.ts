import type { BackingAnswer, BackingInput, BackingLayout as Layout } from './calculators/backing/shape.js';
import type { BattingAnswer, BattingInput } from './calculators/batting/shape.js';
import type { BindingAnswer, BindingInput } from './calculators/binding/shape.js';
import type { BlockAnswer, BlockFabric as Covered, BlockInput } from './calculators/block/shape.js';
import type { Border as OneBorder, BorderPiece as OneBorderPiece, BordersAnswer, BordersInput } from './calculators/borders/shape.js';
import type { FabricPlan as Plan } from './calculators/cutting/plan-shape.js';
import type { CuttingAnswer, CuttingInput } from './calculators/cutting/shape.js';
import type { SleeveAnswer, SleeveInput } from './calculators/sleeve/shape.js';
import type { TopAnswer, TopInput } from './calculators/top/shape.js';
import type { Answer as AnyAnswer } from './ledger/answer.js';
import type { Planner } from './ledger/planning.js';
import type { CutStrip as Strip, LaidPiece as Piece } from './ledger/strips.js';
import { type WorksheetInput } from './workbook/plain.js';
import { type ShoppingLine as Line, type WorksheetAnswer } from './workbook/shape.js';
import type { Refused, Result, Written } from './words/told.js';
export type { Problem, Refused, WorkingRow as Row, WrittenCut as Cut, WrittenMoney as Money, WrittenPurchase as Purchase, } from './words/told.js';
export type { BackingInput, BattingInput, BindingInput, BlockInput, BordersInput, CuttingInput, SleeveInput, TopInput, WorksheetInput, };
export { learn } from './words/languages.js';
/** What every calculator gives back. */
export type Answer = Result<AnyAnswer>;
/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export type LaidPiece = Written<Piece>;
/** Equal strips across the cloth, and what each gives. */
export type CutStrip = Written<Strip>;
type Calculator<Input, Answer extends object> = (input?: Input | null) => Result<Answer> | Refused;
/** Takes a planner as its second argument, in place of the usual one. */
type PlanningCalculator<Input, Answer extends object> = (input?: Input | null, plan?: Planner) => Result<Answer> | Refused;
/** What {@link reckonBacking} gives back. Lengths are exact inches. */
export type BackingResult = Result<BackingAnswer>;
/** One way to make the back. */
export type BackingLayout = Written<Layout>;
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth. The one with the least cloth comes first, then the one
 * with the fewest seams. Layouts with a pieced strip come last, unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBacking: Calculator<BackingInput, BackingAnswer>;
/** What {@link reckonBatting} gives back. Lengths are exact inches. */
export type BattingResult = Result<BattingAnswer>;
/** A package that is sold, and whether it is large enough. */
export type BattingPackageResult = BattingResult['packages'][number];
/** One way to cut the batting from a roll. */
export type BattingRoll = BattingResult['rolls'][number];
/**
 * Batting for a quilt, from a package or from the roll. Also the size of a quilt for a bed. Impossible inputs give `errors`, never
 * an exception.
 */
export declare const reckonBatting: Calculator<BattingInput, BattingAnswer>;
/** What {@link reckonBinding} gives back. Lengths are exact inches. */
export type BindingResult = Result<BindingAnswer>;
/**
 * Cloth for a quilt's binding: strips across the cloth joined end to end, or squares for continuous bias; and the same
 * from fat quarters. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBinding: Calculator<BindingInput, BindingAnswer>;
/** What {@link reckonBlock} gives back. Lengths are exact inches. */
export type BlockResult = Result<BlockAnswer>;
/** What one block has of one fabric. */
export type BlockFabric = Written<Covered>;
/**
 * One block of a quilt, as a chart of fabric letters: what to cut for so many of them, and the cloth of each fabric. Impossible
 * inputs give `errors`, never an exception.
 */
export declare const reckonBlock: PlanningCalculator<BlockInput, BlockAnswer>;
/** What {@link reckonBorders} gives back; `fabric` and `buy` are for all borders from one cloth. Lengths are exact inches. */
export type BordersResult = Result<BordersAnswer>;
/** One border. */
export type Border = Written<OneBorder>;
/** Equal pieces of one border. */
export type BorderPiece = Written<OneBorderPiece>;
/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBorders: Calculator<BordersInput, BordersAnswer>;
/** What {@link reckonCutting} gives back. Lengths are exact inches. */
export type CuttingResult = Result<CuttingAnswer>;
/** One fabric's plan. */
export type FabricPlan = Written<Plan>;
/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonCutting: PlanningCalculator<CuttingInput, CuttingAnswer>;
/** What {@link reckonSleeve} gives back. Lengths are exact inches. */
export type SleeveResult = Result<SleeveAnswer>;
/**
 * Cloth for the sleeve that a quilt hangs by: a strip as long as the quilt is wide, joined where the cloth is narrower.
 * Impossible inputs give `errors`, never an exception.
 */
export declare const reckonSleeve: Calculator<SleeveInput, SleeveAnswer>;
/** What {@link reckonTop} gives back. Lengths are exact inches. */
export type TopResult = Result<TopAnswer>;
/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth. The patches
 * of the blocks are not in it: they belong into a cut list.
 */
export declare const reckonTop: PlanningCalculator<TopInput, TopAnswer>;
/** What {@link reckonWorksheet} gives back. Lengths are exact inches. */
export type WorksheetResult = Result<WorksheetAnswer>;
/** One fabric, in one width, on the shopping list. */
export type ShoppingLine = Written<Line>;
/**
 * One shopping list for all parts of a quilt. The parts of a fabric are added up before rounding, and planned together if that
 * saves cloth. The list has prices, and bolts if a shop cuts kits. A part whose fabric is not declared still gets a line.
 */
export declare const reckonWorksheet: PlanningCalculator<WorksheetInput, WorksheetAnswer>;
