import { exact, least, most, sum, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import type { Purchase } from '../measure/shop.js';
import { canBeCut } from '../planner/check.js';
import { planCloth } from '../planner/plan.js';
import { SEAM } from '../trade/conventions.js';
import type { Answer, Cut, Input, Refused } from './answer.js';
import { Book } from './book.js';
import { PLANNING, type Planner } from './planning.js';
import { choiceField, countField, flagField, lengthField } from './fields.js';
import { roughly } from './rough.js';
import { sentence } from './sentences.js';
import { clothFields, markField, plural, shopFields } from './shared.js';
import { stacked, stripsOf, UNSOUND, type CutStrip } from './strips.js';
import { diagonal, joinedPieces, settingTriangles, sashingPieces, type Layout } from './top-pieces.js';
import { ownCloths, type OwnCloth } from './widths.js';

export const topFields = {
  block: lengthField('Block, finished', { most: '200 in' }),
  across: countField('Blocks across', 100),
  down: countField('Blocks down', 100),
  set: choiceField('Set', { straight: 'straight', 'on-point': 'on point' }),
  sashing: lengthField('Sashing, finished', { initial: '0', zero: true, most: '60 in', hint: '0 for none' }),
  cornerstones: flagField('Cornerstones'),
  frame: flagField('Sashing round the outside'),
  ...clothFields,
  seam: lengthField('Seam allowance', { initial: SEAM, zero: true, most: '2 in', more: true }),
  ...markField,
  ...shopFields,
};

/** Input of {@link reckonTop}: `block`, `across`, `down`, `sashing`, `cornerstones`, `frame`, `set`, … */
export type TopInput = Input<typeof topFields>;

/** What {@link reckonTop} gives back. Lengths are exact inches. */
export interface TopResult extends Answer {
  finished: { width: string; length: string };
  /** With its seam allowance all round. */
  unfinished: { width: string; length: string };
  blocks: number;
  /** Sashing and cornerstones: cut sizes and counts. */
  pieces: Cut[];
  /** Side triangles on point: how many, and the square that four are cut from. */
  sideTriangles?: number;
  sideSquare?: string;
  /** The square that two corner triangles are cut from. */
  cornerSquare?: string;
  /** Cloth for each kind of piece, each rounded by itself, and the strips it is cut in. */
  parts: { part: string; fabric: string; buy: Purchase; cloth: OwnCloth; cuts: Cut[]; strips: CutStrip[] }[];
  /** The strips where all are cut from one cloth. */
  strips: CutStrip[];
}

/** Pieces, the cloth they take and the strips they are cut from. */
interface Planned {
  cuts: Cut[];
  fabric: Exact;
  strips: CutStrip[];
}

/** A strip that is too long by no more than this can be made to fit: a small change to the blocks or the sashing. */
const A_LITTLE = exact(2);

/** So much cloth that no other order of cutting saves it: strips across the cloth come first, as the list of strips says. */
const ANY = exact(100_000);

/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth;
 * the blocks' own patches are a cut list's matter. While a planner is at work the cloth is what strips of each kind take.
 */
export const reckonTop = (input: TopInput = {}, plan: Planner = planCloth): TopResult | Refused => {
  const book = new Book(topFields, input);
  return book.finish<TopResult>(() => {
    const { n, l } = book;
    const { block, across, down, set, sashing, cornerstones, frame, seam } = book.values;
    const onPoint = set === 'on-point';
    const sashed = sashing.gt(0);
    const allowance = seam.mul(2);
    if (onPoint && sashed && !cornerstones)
      book.refuse(
        'cornerstones',
        'On point, sashing is reckoned with cornerstones. Tick cornerstones, or write 0 for the sashing.',
      );

    book.given('block', 'across', 'down', 'set', 'sashing', 'cornerstones', 'frame');
    const inner = onPoint ? (across - 1) * (down - 1) : 0;
    const blocks = across * down + inner;
    book.row(
      'blocks',
      'Blocks in all',
      `${blocks}`,
      onPoint
        ? `${across} × ${down} + ${across - 1} × ${down - 1} = ${blocks}`
        : `${across} × ${down} = ${blocks}`,
      ['across', 'down', 'set'],
    );

    const pitch = block.add(sashing);
    const sideOf = (count: number): Exact =>
      onPoint ? diagonal(pitch.mul(count).add(sashing)) : pitch.mul(count).add(sashing.mul(frame ? 1 : -1));
    const howSide = (count: number, side: Exact): string => {
      if (onPoint)
        return `${sashed ? `(${count} × (${n(block)} + ${n(sashing)}) + ${n(sashing)})` : `${count} × ${n(block)}`} × √2 ≈ ${l(side).replace('≈', '')}`;
      const gaps = count + (frame ? 1 : -1);
      return `${count} × ${n(block)}${sashed ? ` + ${gaps} × ${n(sashing)}` : ''} = ${l(side)}`;
    };
    const width = sideOf(across);
    const length = sideOf(down);
    const from = ['block', 'sashing', 'set', 'frame'];
    const finishedWidth = book.measurable(
      'finishedWidth',
      'Top width, finished',
      width,
      howSide(across, width),
      ['across', ...from],
    );
    const finishedLength = book.measurable(
      'finishedLength',
      'Top length, finished',
      length,
      howSide(down, length),
      ['down', ...from],
    );
    const unfinished = { width: finishedWidth.add(allowance), length: finishedLength.add(allowance) };
    book.row(
      'unfinished',
      'Before its borders are sewn on',
      book.size(unfinished.width, unfinished.length),
      `${l(allowance)} more each way`,
      ['finishedWidth', 'finishedLength', 'seam'],
    );
    const usual = book.cloth();
    const { kept, washed } = usual;
    const clothAt = ownCloths(book, usual);
    book.given('seam', 'mark', 'shrinkage', 'increment', 'price', 'currency');

    const layout: Layout = { ...book.values, onPoint, blocks, finishedWidth };
    const { sashes, stones } = sashingPieces(book, layout);
    const triangles = onPoint && settingTriangles(book, layout);
    if (onPoint && sashed && !frame)
      book.notes.push('On point, sashing runs round every block, on the outside too.');

    let isPlanning = false;
    const clothFor = (cuts: Cut[], part: keyof typeof topFields, cloth: Exact): Planned => {
      const pieces = cuts.map((cut) => ({
        width: exact(cut.length),
        height: exact(cut.width),
        count: cut.count,
        turn: true,
      }));
      const on = { width: cloth, step: ANY };
      const rough = roughly(cuts, cloth);
      // What does not fit is refused without a search.
      const planned = rough ? plan(pieces, on) : planCloth(pieces, on);
      if (typeof planned === 'number') {
        isPlanning = true;
        return { cuts, fabric: rough!.length.div(kept), strips: rough!.strips };
      }
      if (!planned.ok) return book.refuse(part, sentence(planned.problem));
      if (!canBeCut(pieces, on, planned)) return book.refuse(part, UNSOUND);
      const names = cuts.map(({ piece }) => piece);
      return { cuts, fabric: planned.length.div(kept), strips: stripsOf(planned, names) };
    };
    /** As the pieces are, or with the long ones joined where that takes less. */
    const bestFor = (cuts: Cut[], part: keyof typeof topFields, cloth: Exact): Planned => {
      const whole = clothFor(cuts, part, cloth);
      const pieces = joinedPieces(book, cuts, cloth, layout);
      const joined = pieces && clothFor(pieces, part, cloth);
      if (joined && cuts === sashes) sayJoins(whole, joined, cloth);
      return joined?.fabric.lt(whole.fabric) ? joined : whole;
    };
    /** Shows both plans, and what a strip that is a little shorter would save. */
    const sayJoins = (whole: Planned, joined: Planned, cloth: Exact): void => {
      const how = ({ strips }: Planned): string => `strips across the cloth: ${stacked(strips, n, washed)} =`;
      const from = ['sashing', 'block', 'across', 'fabricWidth'];
      book.row('sashingJoined', 'Sashing, long strips joined', joined.fabric, how(joined), from);
      book.row('sashingWhole', 'Sashing, cut along the cloth without joins', whole.fabric, how(whole), from);
      const long = most(...sashes.map(({ length }) => exact(length)));
      const over = long.sub(cloth);
      if (over.gt(A_LITTLE)) return;
      const shorter = sashes.map((cut) => ({
        ...cut,
        length: mixed(least(exact(cut.length), cloth)),
      }));
      const saves = least(whole.fabric, joined.fabric).sub(clothFor(shorter, 'sashing', cloth).fabric);
      book.notes.push(
        `The sashing of ${l(long)} is ${l(over)} longer than the cloth is wide. Were it ${l(over)} shorter, it would need no join${saves.gt(0) ? ` and ${l(saves)} less cloth` : ''}.`,
      );
    };
    const kinds = [
      { part: 'sashing', cuts: sashes, key: 'sashing' },
      { part: 'cornerstones', cuts: stones, key: 'cornerstones' },
      { part: 'setting triangles', cuts: triangles ? triangles.cuts : [], key: 'block' },
    ] as const;
    const parts = kinds
      .filter(({ cuts }) => cuts.length)
      .map(({ part, cuts, key }, at) => {
        const own = clothAt(at);
        const best = bestFor(cuts, key, own.width);
        return { part, buy: book.toBuy(best.fabric), cloth: own, ...best };
      });
    const apart = {
      cuts: parts.flatMap(({ cuts }) => cuts),
      fabric: sum(parts.map(({ fabric }) => fabric)),
      strips: parts.flatMap(({ strips }) => strips),
    };
    const areOne = parts.length > 1 && parts.every(({ cloth: { width } }) => width.equals(usual.cloth));
    // One kind of piece is planned already, and several may take less one below the other.
    const together = areOne
      ? bestFor(
          kinds.flatMap(({ cuts }) => cuts),
          'sashing',
          usual.cloth,
        )
      : apart;
    const { fabric, strips, cuts: pieces } = apart.fabric.lt(together.fabric) ? apart : together;
    if (isPlanning) book.notes.push(`${PLANNING}: it may take less cloth.`);
    const bought = book.buy(
      fabric,
      parts.length
        ? `strips across the cloth: ${stacked(strips, n, washed)} =`
        : 'nothing to cut but the blocks',
      ['sashing', 'block', 'fabricWidth'],
      areOne ? 'Cloth, if all from one' : undefined,
    );
    const takes = parts.map(({ part }) => part).join(' and ') + (areOne ? ' from one cloth' : '');
    return {
      ...bought,
      finished: { width: finishedWidth, length: finishedLength },
      unfinished,
      blocks,
      pieces,
      ...(triangles && triangles.squares),
      parts,
      strips,
      cuts: pieces,
      summary: `${plural(blocks, 'block')} of ${l(block)}, ${onPoint ? 'on point' : `${across} by ${down}`}${sashed ? `, with ${l(sashing)} sashing` : ''}: the top finishes ${book.size(finishedWidth, finishedLength)}.${takes && !book.input.shared ? ` For ${takes} buy ${bought.buy.text}.` : ''}`,
    };
  });
};
