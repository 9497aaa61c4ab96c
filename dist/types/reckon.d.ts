/** The arithmetic alone, without a page: plain input, plain result. */
export { reckonBacking, type BackingInput, type BackingLayout, type BackingResult, } from './reckon/backing.js';
export { reckonBatting, type BattingInput, type BattingPackageResult, type BattingResult, type BattingRoll, } from './reckon/batting.js';
export { reckonBinding, type BindingInput, type BindingResult } from './reckon/binding.js';
export { reckonBorders, type Border, type BorderPiece, type BordersInput, type BordersResult, } from './reckon/borders.js';
export type { Answer, Cut, Problem, Refused, Row } from './reckon/answer.js';
export type { Purchase } from './measure/shop.js';
export { reckonCutting, type CuttingInput, type CuttingResult, type FabricPlan } from './reckon/cutting.js';
export type { CutStrip, LaidPiece } from './reckon/strips.js';
export { reckonTop, type TopInput, type TopResult } from './reckon/top.js';
export { reckonWorksheet, type ShoppingLine, type WorksheetInput, type WorksheetResult, } from './reckon/worksheet.js';
