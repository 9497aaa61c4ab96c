import { laidOut } from '../ledger/strips.js';
import { Purchase } from '../ledger/purchase.js';
import { ZERO, ONE } from '../measure/exact.js';
import { cutFromOwn } from '../planner/own-pieces.js';
import { lyingFor } from './at-hand.js';
import { say } from './sayings.js';

/** A reader's own cloth of one fabric. Each line of the list takes from it what it uses. */
class Stock {
    #left;
    constructor(
    /** As the reader wrote it. */
    written, pieces, 
    /** Whether the fabric says how wide it is. */
    isWide) {
        this.written = written;
        this.isWide = isWide;
        this.#left = pieces.map((piece) => ({ ...piece }));
    }
    /** The same cloth again, for another way to make the list. */
    copy() {
        return new Stock(this.written, this.#left, this.isWide);
    }
    get pieces() {
        return this.#left;
    }
    /** Lengths of cloth are as wide as the cloth of the parts, if the fabric does not say how wide it is. */
    asWideAs(width) {
        if (!this.isWide)
            for (const piece of this.#left)
                if (piece.kind === 'length')
                    piece.width = width;
    }
    /** Takes so many of a piece. */
    take(piece, count) {
        piece.count -= count;
    }
}
/** A piece of own cloth as it is cut, in its size after the wash. */
const asCut = (piece, { oneWay, kept }) => {
    const { width, height } = lyingFor(piece, oneWay);
    return { width: width.mul(kept), height: height.mul(kept), count: piece.count };
};
const areaOf = ({ width, length }) => width.mul(length);
/** The orders in which own cloth may be used: the largest piece first, or the smallest. */
const ordersOf = (pieces) => {
    const largest = [...pieces].sort((a, b) => areaOf(b).compare(areaOf(a)));
    return pieces.length > 1 ? [largest, [...largest].reverse()] : [largest];
};
/** The ways to cut pieces from own cloth first. A number is the progress of a plan that is not ready yet. */
const waysFrom = (wanted, own, lying, plan) => ordersOf(own.filter(({ count }) => count)).map((order) => {
    const cloth = order.map((piece) => asCut(piece, lying));
    const cut = cutFromOwn(wanted, cloth, plan);
    if (typeof cut === 'number')
        return cut;
    const used = cut.used.flatMap((one) => {
        const [piece, on] = [order[one.own], cloth[one.own]];
        return piece && on ? [{ piece, cloth: on, cut: one }] : [];
    });
    return { rest: cut.rest, used };
});
/** Gives what own cloth has to the lists in their order, and returns what each still wants. */
const stillWanted = (wanted, rest) => {
    const covered = rest.map((left, piece) => wanted.reduce((all, counts) => all + (counts[piece] ?? 0), 0) - left);
    return wanted.map((counts) => counts.map((count, piece) => {
        const given = Math.min(count, covered[piece] ?? 0);
        covered[piece] = (covered[piece] ?? 0) - given;
        return count - given;
    }));
};
/** The plans on own cloth, as they are drawn. */
const drawnOwn = (letter, { used }, names) => used.map(({ piece, cloth: { width, height }, cut: { plan } }) => ({
    fabric: letter,
    need: ZERO,
    buy: new Purchase(height, ONE, 'sheet', say('ownPiece', { width: piece.width, length: piece.length })),
    pieces: [],
    ...laidOut(plan, { width, height }, names),
}));

export { Stock, asCut, drawnOwn, stillWanted, waysFrom };
