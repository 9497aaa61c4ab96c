import type { CutPiece } from '../cutting/plan.js';
import { planStock } from '../cutting/stock.js';
import { exact, least, nearestTo, sum, wholeDown, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { purchase, toStep, type Purchase } from '../measure/shop.js';
import { toUnit } from '../measure/units.js';
import { BOLT } from '../trade/conventions.js';
import { Book, type Answer, type Cut, type Input, type Refused } from './book.js';
import type { Planner } from './cutting.js';
import { readField, Refusal, type Fields } from './fields.js';
import { clothFields, quiltFields, shopFields } from './shared.js';

const { shrinkage, increment, currency } = shopFields;

export const worksheetFields = {
  width: { ...quiltFields.width, optional: true, more: true, hint: 'where there is no quilt top to reckon it from' },
  length: { ...quiltFields.length, optional: true, more: true, hint: 'where there is no quilt top to reckon it from' },
  fabricWidth: { kind: 'length', label: clothFields.fabricWidth.label, optional: true, more: true, hint: 'of every fabric that does not say its own' },
  seam: { kind: 'length', label: 'Seam allowance', optional: true, zero: true, most: '2 in', more: true },
  kits: { kind: 'count', label: 'Kits', optional: true, most: 10_000, hint: 'for a shop: how many kits to cut' },
  bolt: { kind: 'length', label: 'Cloth on a bolt', initial: BOLT, most: '10000 in', hint: 'a kit’s cloth is never pieced from two bolts' },
  shrinkage,
  increment,
  currency,
} as const satisfies Fields;

/** A fabric as the page declares it. */
export interface FabricInput {
  letter: string;
  name?: string | undefined;
  fabricWidth?: unknown;
  /** Of one yard or metre. */
  price?: unknown;
}

/** What one part of the quilt takes from one fabric. */
export interface PartInput {
  /** `Binding`, `Borders` … */
  title: string;
  /** The fabric's letter; empty where the part names none. */
  fabric: string;
  /** Exact inches of cloth, before rounding. */
  need: string;
  /** The cloth's usable width it was reckoned with, exact inches. */
  width: string;
  /** What is cut from it, for planning several parts together; absent where a part is not cut in pieces. */
  pieces?: { width: string; length: string; count: number; turn: boolean }[];
  /** Inches bought for one inch of washed cloth. */
  washed?: string;
}

/** Something bought by the piece: a package of batting, fat quarters. */
export interface ItemInput {
  title: string;
  text: string;
  cost?: string | undefined;
}

/** Input of {@link reckonWorksheet}. */
export type WorksheetInput = Input<typeof worksheetFields> & {
  fabrics?: FabricInput[];
  parts?: PartInput[];
  items?: ItemInput[];
  /** What is wrong elsewhere on the worksheet. */
  troubles?: string[];
};

/** One fabric on the shopping list. Lengths are exact inches. */
export interface ShoppingLine {
  letter: string;
  name: string;
  /** What it is for, each with its own need. */
  parts: { title: string; need: string }[];
  /** Before rounding, all parts together. */
  need: string;
  /** What planning the parts together saves. */
  saved: string;
  buy: Purchase;
  price?: string;
  cost?: string;
  /** Where kits are cut: bolts needed, and no fewer would do. */
  bolts?: number;
}

/** What {@link reckonWorksheet} gives back. */
export interface WorksheetResult extends Answer {
  fabrics: ShoppingLine[];
  items: ItemInput[];
  /** All costs together, where there are prices. */
  total?: string;
  kits?: { count: number; costEach: string; cost: string };
}

const piecesOf = (parts: PartInput[]): CutPiece[] =>
  parts.flatMap(({ pieces = [] }) =>
    pieces.map(({ width, length, count, turn }) => ({ width: exact(width), height: exact(length), count, turn })),
  );

/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
export const reckonWorksheet = (input: WorksheetInput = {}, plan?: Planner): WorksheetResult | Refused => {
  const book = new Book(worksheetFields, input);
  return book.finish<WorksheetResult>(() => {
    const { l } = book;
    const { increment, kits, bolt } = book.values;
    const { fabrics: declared = [], parts = [], items = [], troubles = [] } = input;
    book.notes.push(...troubles);
    book.given('kits', 'bolt', 'width', 'length', 'fabricWidth', 'seam', 'shrinkage', 'increment', 'currency');

    const letters = [...new Set([...declared.map(({ letter }) => letter), ...parts.map(({ fabric }) => fabric)])];
    const priceOf = (letter: string): Exact | undefined => {
      const fabric = declared.find((one) => one.letter === letter);
      try {
        return readField({ kind: 'money', label: `The price of fabric ${letter}`, optional: true }, fabric?.price, book.style) as Exact | undefined;
      } catch (refusal) {
        if (!(refusal instanceof Refusal)) throw refusal;
        book.notes.push(refusal.message);
        return undefined;
      }
    };

    let total = exact(0);
    let priced = false;
    let kitTotal = exact(0);
    const lines = letters.flatMap((letter): ShoppingLine[] => {
      const mine = parts.filter(({ fabric }) => fabric === letter);
      const fabric = declared.find((one) => one.letter === letter);
      const called = letter ? `Fabric ${letter}` : 'Fabric without a letter';
      if (!mine.length) {
        book.notes.push(`${called} is declared, but no part is cut from it.`);
        return [];
      }
      if (letter && !fabric && declared.length)
        book.notes.push(`${called} is used by ${mine.map(({ title }) => title.toLowerCase()).join(' and ')} but not declared. Add a <quilt-fabric letter="${letter}">.`);
      const added = sum(mine.map(({ need }) => exact(need)));
      let need = added;
      const widths = mine.map(({ width }) => exact(width));
      if (plan && mine.length > 1 && mine.every(({ pieces }) => pieces?.length)) {
        const together = plan(piecesOf(mine), { width: least(widths[0]!, ...widths) });
        if (together.ok) need = least(added, together.length.mul(exact(mine[0]!.washed ?? 1)));
        else if (together.message.includes('being planned')) book.notes.push(`${called}: whether its parts fit together on less cloth is still being planned.`);
      }
      const bought = toStep(need, increment);
      const buy = purchase(bought, increment, book.style.comma);
      const saved = added.sub(need);
      const price = priceOf(letter);
      const cost = price && nearestTo(toUnit(bought, increment.unit).mul(price), exact(1, 100));
      if (cost) [total, priced] = [total.add(cost), true];
      const sums = mine.length > 1 ? `${mine.map((part) => book.n(exact(part.need))).join(' + ')} = ${l(added)}` : mine[0]!.title.toLowerCase();
      book.row(`need-${letter}`, `${called}${fabric?.name ? `, ${fabric.name}` : ''}`, need, saved.gt(0) ? `${sums}; planned together ${l(need)}` : sums);
      book.row(`buy-${letter}`, 'Buy', buy.text, `${l(need)}, up to a step of {increment}`, [`need-${letter}`]);
      let bolts: number | undefined;
      if (kits) {
        const cut = planStock([{ length: bought, count: kits }], bolt);
        if (!cut.ok) book.notes.push(`${called}: a kit’s ${buy.text} is longer than a bolt of ${l(bolt)}. Write a longer bolt.`);
        else {
          bolts = cut.count;
          book.row(`bolts-${letter}`, `Bolts for ${kits} kits`, `${bolts}`, `${wholeDown(bolt.div(bought))} kits of ${buy.text} from each bolt of {bolt unit}; no fewer than ${cut.bound} would do`, [`buy-${letter}`, 'kits']);
          if (price) kitTotal = kitTotal.add(nearestTo(toUnit(bolt, increment.unit).mul(bolts).mul(price), exact(1, 100)));
        }
      }
      return [
        {
          letter,
          name: fabric?.name ?? '',
          parts: mine.map(({ title, need }) => ({ title, need })),
          need: mixed(need),
          saved: mixed(saved),
          buy,
          ...(price && { price: book.money(price) }),
          ...(cost && { cost: book.money(cost) }),
          ...(bolts !== undefined && { bolts }),
        },
      ];
    });
    for (const { cost } of items) if (cost) [total, priced] = [total.add(exact(cost)), true];
    if (priced) book.row('total', kits ? 'One kit' : 'Total', book.money(total), [...lines.map(({ cost }) => cost), ...items.map(({ cost }) => cost && book.money(exact(cost)))].filter(Boolean).join(' + '));
    if (priced && kits) {
      const itemCost = sum(items.map(({ cost }) => exact(cost ?? 0))).mul(kits);
      book.row('kitCost', `Whole bolts and items for ${kits} kits`, book.money(kitTotal.add(itemCost)), 'bolts bought whole, and every kit’s items', ['kits', 'bolt']);
    }

    const need = sum(lines.map(({ need }) => exact(need)));
    const bought = sum(lines.map(({ buy }) => exact(buy.inches)));
    const cuts: Cut[] = [];
    const count = lines.length;
    return {
      buy: purchase(bought, increment, book.style.comma),
      fabric: mixed(need),
      spare: mixed(bought.sub(need)),
      summary: count ? `${count} fabric${count > 1 ? 's' : ''}${items.length ? ` and ${items.map(({ text }) => text).join(', ')}` : ''}.` : 'Nothing on the list yet: put calculators inside this worksheet.',
      cuts,
      fabrics: lines,
      items,
      ...(priced && { total: book.money(total) }),
      ...(priced && kits && { kits: { count: kits, costEach: book.money(total), cost: book.money(kitTotal) } }),
    };
  });
};
