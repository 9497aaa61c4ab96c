import type { PropertyDeclarations } from 'lit';
import type { Style } from '../measure/format.js';
import type { Purchase } from '../measure/shop.js';
import type { Answer, Cut, Input, Refused } from '../reckon/answer.js';
import type { Fields } from '../reckon/fields.js';
import type { Picture } from '../drawing/picture.js';

/** A table under the drawing: other ways to do it, or what a shop has. */
export interface Listing {
  caption: string;
  head?: string[];
  rows: string[][];
  /** It says how to cut, and is printed on a worksheet too; only there, where the sheet's rows say it already. */
  toCut?: true | 'on paper';
}

/** What a sheet shows: a calculator, its words and its drawings. */
export interface Calculator<R extends Answer = Answer> {
  /** Heads the sheet and names its files: `Backing`. */
  title: string;
  fields: Fields;
  reckon(input: Input): R | Refused;
  /** What stands in large type, in two parts. Default `Buy` and the amount. */
  headline?(result: R, style: Style): [string, string];
  draw(result: R, style: Style): Picture[];
  listings?(result: R, style: Style): Listing[];
  /** Ways that take less, where the shop's stock does not do. */
  instead?(result: R): { words: string; buy: Purchase }[];
  /** What it takes from which fabric, for a shopping list. Default: all of its cloth from one. */
  takes?(result: R, letters: string[]): Take[];
  /** In a worksheet it gives the quilt its size, for all that come after it; in words what it is: `quilt top`. */
  finishes?: string;
  /** Inputs that mean something else here than on the worksheet, so that they do not flow in. */
  own?: string[];
  /** Whether it is bought by the piece as it stands, so that its cloth is added to no other's. Default: it is not. */
  byPiece?: () => boolean;
}

/** What a result takes from one fabric; see the worksheet's parts. Lengths are exact inches. */
export interface Take {
  /** The fabric's letter. */
  fabric: string;
  /** Words for it, where one calculator takes several. */
  title?: string;
  need: string;
  /** The cloth's usable width. Default: the result's. */
  width?: string;
  /** The same as sold, before a wash. Default: the result's. */
  sold?: string | undefined;
  /** What is cut from it. */
  cuts: Cut[];
  /** What other parts' pieces may be laid beside. Default: the cuts; none where they lie as the result says. */
  pieces?: { width: string; length: string; count: number; turn: boolean }[];
  /** Bought by the piece in place of cloth: `4 fat quarters`. */
  item?: string;
  cost?: string | undefined;
}

/** Values a worksheet gives the calculators inside it, and in words where each comes from. */
export interface Flow {
  values: Record<string, unknown>;
  from: Record<string, string>;
}

/** `fabricWidth` → `fabric-width`. */
export const attributeOf = (key: string): string =>
  key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Lit's declarations for a calculator's inputs: an attribute and a property each. */
export const propertiesOf = (fields: Fields): PropertyDeclarations =>
  Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [
      key,
      { attribute: attributeOf(key), type: field.kind === 'flag' ? Boolean : String },
    ]),
  );
