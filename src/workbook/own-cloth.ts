import { laidOut } from '../ledger/strips.js';
import type { Planner } from '../ledger/planning.js';
import { Purchase } from '../ledger/purchase.js';
import { ONE, ZERO, type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { cutFromOwn, type CutFromOwn, type OwnPiece } from '../planner/own-pieces.js';
import type { CutPiece } from '../planner/plan.js';
import { lyingFor, type AtHand } from './at-hand.js';
import { say } from './sayings.js';
import type { PlannedTogether } from './shape.js';

/** A reader's own cloth of one fabric. Each line of the list takes from it what it uses. */
export class Stock {
  readonly #left: AtHand[];

  constructor(
    /** As the reader wrote it. */
    readonly written: string,
    pieces: AtHand[],
    /** Whether the fabric says how wide it is. */
    readonly isWide: boolean,
  ) {
    this.#left = pieces.map((piece) => ({ ...piece }));
  }

  /** The same cloth again, for another way to make the list. */
  copy(): Stock {
    return new Stock(this.written, this.#left, this.isWide);
  }

  get pieces(): AtHand[] {
    return this.#left;
  }

  /** Lengths of cloth are as wide as the cloth of the parts, if the fabric does not say how wide it is. */
  asWideAs(width: Exact): void {
    if (!this.isWide) for (const piece of this.#left) if (piece.kind === 'length') piece.width = width;
  }

  /** Takes so many of a piece. */
  take(piece: AtHand, count: number): void {
    piece.count -= count;
  }
}

/** How a piece of cloth lies, and how much a wash leaves of it. */
export interface Lying {
  oneWay: boolean;
  kept: Exact;
}

/** A piece of own cloth as it is cut, in its size after the wash. */
export const asCut = (piece: AtHand, { oneWay, kept }: Lying): OwnPiece => {
  const { width, height } = lyingFor(piece, oneWay);
  return { width: width.mul(kept), height: height.mul(kept), count: piece.count };
};

/** What is cut from own cloth, and what is left. */
export interface OwnPlan {
  /** For each of the pieces that were asked for: how many are left. */
  rest: number[];
  used: { piece: AtHand; cloth: OwnPiece; cut: CutFromOwn }[];
}

const areaOf = ({ width, length }: AtHand): Exact => width.mul(length);

/** The orders in which own cloth may be used: the largest piece first, or the smallest. */
const ordersOf = (pieces: AtHand[]): AtHand[][] => {
  const largest = [...pieces].sort((a, b) => areaOf(b).compare(areaOf(a)));
  return pieces.length > 1 ? [largest, [...largest].reverse()] : [largest];
};

/** The ways to cut pieces from own cloth first. A number is the progress of a plan that is not ready yet. */
export const waysFrom = (
  wanted: CutPiece[],
  own: AtHand[],
  lying: Lying,
  plan: Planner,
): (OwnPlan | number)[] =>
  ordersOf(own.filter(({ count }) => count)).map((order) => {
    const cloth = order.map((piece) => asCut(piece, lying));
    const cut = cutFromOwn(wanted, cloth, plan);
    if (typeof cut === 'number') return cut;
    const used = cut.used.flatMap((one) => {
      const [piece, on] = [order[one.own], cloth[one.own]];
      return piece && on ? [{ piece, cloth: on, cut: one }] : [];
    });
    return { rest: cut.rest, used };
  });

/** Gives what own cloth has to the lists in their order, and returns what each still wants. */
export const stillWanted = (wanted: number[][], rest: number[]): number[][] => {
  const covered = rest.map(
    (left, piece) => wanted.reduce((all, counts) => all + (counts[piece] ?? 0), 0) - left,
  );
  return wanted.map((counts) =>
    counts.map((count, piece) => {
      const given = Math.min(count, covered[piece] ?? 0);
      covered[piece] = (covered[piece] ?? 0) - given;
      return count - given;
    }),
  );
};

/** The plans on own cloth, as they are drawn. */
export const drawnOwn = (letter: string, { used }: OwnPlan, names: Message[]): PlannedTogether[] =>
  used.map(({ piece, cloth: { width, height }, cut: { plan } }) => ({
    fabric: letter,
    need: ZERO,
    buy: new Purchase(height, ONE, 'sheet', say('ownPiece', { width: piece.width, length: piece.length })),
    pieces: [],
    ...laidOut(plan, { width, height }, names),
  }));
