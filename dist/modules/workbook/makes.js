import { mostThatFit } from '../planner/own-pieces.js';
import { asCut } from './own-cloth.js';

/** How many blocks of each kind a reader's own cloth makes, if all of it is for them, and which fabric runs out. */
const blocksFromOwn = (makers, declared, plan) => makers.flatMap(({ title, count, piecesOf, oneWay, kept }) => {
    const letters = piecesOf(1).map(({ fabric }) => fabric);
    const found = letters.flatMap((letter) => {
        const own = declared.find((fabric) => fabric.letter === letter)?.atHand;
        if (!own?.length)
            return [];
        const cloth = own.map((piece) => asCut(piece, { oneWay, kept }));
        const pieces = (blocks) => (piecesOf(blocks).find(({ fabric }) => fabric === letter)?.pieces ?? []).map(({ width, length, count }) => ({ width, height: length, count, turn: !oneWay }));
        return [{ letter, blocks: mostThatFit(pieces, cloth, count, plan) }];
    });
    const known = found.flatMap(({ letter, blocks }) => (blocks === undefined ? [] : [{ letter, blocks }]));
    if (!found.length || known.length < found.length)
        return [];
    const blocks = Math.min(...known.map(({ blocks }) => blocks));
    const first = known.find((one) => one.blocks === blocks);
    return [{ title, blocks, of: count, runsOut: blocks < count ? first?.letter : undefined }];
});

export { blocksFromOwn };
