import { Cut } from '../../ledger/purchase.js';
import { Quantity, count } from '../../ledger/quantity.js';
import { toMark, exact, most, least } from '../../measure/exact.js';
import { fewest } from '../../planner/joins.js';
import { PATCHES } from '../../trade/patches.js';
import { say } from './shape.js';

/** Sashing and cornerstones, as they are cut. */
const sashingPieces = ({ across, down, count: blocks, block, onPoint, sashing, cornerstones, frame }, finishedWidth, { seam, mark }) => {
    if (sashing.equals(0))
        return { sashes: [], stones: [] };
    const cutSize = (finished) => toMark(finished.add(seam.mul(2)), mark);
    const narrow = cutSize(sashing);
    const cut = (count, piece, long) => count ? [new Cut(count, piece, narrow, long)] : [];
    const side = cutSize(block);
    if (onPoint) {
        // Edges between neighbours count once. Euler's formula gives the number of corners.
        const edges = 4 * across * down;
        return {
            sashes: cut(edges, say('sash'), side),
            stones: cut(edges - blocks + 1, say('cornerstone'), narrow),
        };
    }
    const upright = across + (frame ? 1 : -1);
    const level = down + (frame ? 1 : -1);
    const between = cut(upright * down, say('sashBetweenBlocks'), side);
    if (!cornerstones) {
        const inOne = cut(level, say('sashBetweenRowsInOne'), cutSize(finishedWidth));
        return { sashes: [...between, ...inOne], stones: [] };
    }
    return {
        sashes: [...between, ...cut(level * across, say('sashBetweenRows'), side)],
        stones: cut(upright * level, say('cornerstone'), narrow),
    };
};
/**
 * The same pieces, but those that are longer than the cloth is wide are joined from strips across it: whole strips, and an end for
 * the rest. Undefined if no piece is that long, or if a seam uses up a whole strip.
 */
const joinedPieces = (cuts, cloth, { seam, mark }) => {
    const loss = seam.mul(2);
    if (loss.gte(cloth) || cuts.every(({ length }) => length.lte(cloth)))
        return undefined;
    return cuts.flatMap((cut) => {
        const { piece, width, length } = cut;
        const whole = (fewest(length, cloth, loss) ?? 1) - 1;
        if (!whole)
            return [cut];
        const left = length.sub(cloth.sub(loss).mul(whole));
        const end = most(left, least(toMark(left, mark), cloth));
        return [
            new Cut(cut.count * whole, say('wholeToJoin', { piece, length }), width, cloth),
            new Cut(cut.count, say('endToJoin', { piece, length }), width, end),
        ];
    });
};
/** What seam allowances add to a patch, shown as one number. */
const seamsOf = (kind, seam) => new Quantity(exact(PATCHES[kind].seams), 'number').times(seam).asResult();
/** The squares for the setting triangles of a top on point, with their rows. */
const settingTriangles = (ledger) => {
    const { block, across, down, sashing, seam, mark } = ledger.inputs;
    const isSashed = sashing.value.gt(0);
    const square = (id, size) => ledger.row(id, size.onMark(mark), {
        how: say('upToMark', { size }),
        from: ['block', 'sashing', 'seam', 'mark'],
    }).value;
    const side = (isSashed ? block.plus(sashing) : block).diagonal();
    const sideSquare = square('sideSquare', side.plus(seamsOf('quarter', seam)));
    const corner = (isSashed ? block.plus(sashing.times(2)) : block).sideOfDiagonal();
    const cornerSquare = square('cornerSquare', corner.plus(seamsOf('half', seam)));
    const between = (blocks) => blocks.minus(count(1)).asResult().times(2);
    const triangles = ledger.row('sideTriangles', between(across).plus(between(down))).value.valueOf();
    const cuts = [new Cut(2, say('squareForCorners'), cornerSquare, cornerSquare)];
    if (triangles)
        cuts.unshift(new Cut(Math.ceil(triangles / 4), say('squareForSides'), sideSquare, sideSquare));
    return { squares: { sideTriangles: triangles, sideSquare, cornerSquare }, cuts };
};

export { joinedPieces, sashingPieces, settingTriangles };
