import { least, most, exact } from '../measure/exact.js';

/** How often the cloth is folded so that a cut across it fits the ruler and the mat. */
const foldsFor = (width, reach) => {
    let folds = 0;
    for (let folded = width; folded.gt(reach) && folds < 10; folded = folded.div(2))
        folds += 1;
    return folds;
};
/** A rotary cutter goes through four layers and no more. Common practice, no source. */
const FOLDS = ['without a fold', 'folded once, selvage to selvage', 'folded twice, in four layers'];
/** Says how to fold cloth and strips, so that a cut across them fits the ruler and the mat. */
const noteFolds = (book, fabrics) => {
    const { l } = book;
    const { ruler, mat } = book.values;
    const reach = least(ruler, most(...mat));
    const largest = (lengths) => most(...lengths.map((length) => exact(length)));
    const widest = largest(fabrics.map(({ width }) => width));
    const tallest = largest(fabrics.flatMap(({ strips }) => strips.map(({ height }) => height)));
    const across = FOLDS[foldsFor(widest, reach)];
    if (!across)
        book.notes.push(`A cut across ${l(widest)} does not fit a ruler and mat of ${l(reach)}, even folded in four layers: cut the cloth to a narrower width first.`);
    else
        book.notes.push(`Cut each strip across the cloth ${across}, so that the cut fits a ${l(reach)} ruler.`);
    const folds = foldsFor(tallest, reach);
    if (folds > 1)
        book.notes.push(`A strip ${l(tallest)} tall is longer than the ruler even folded once: mark it and cut it with scissors.`);
    else if (folds)
        book.notes.push(`Fold a strip that is taller than ${l(reach)} once, end to end, before you cut pieces from it.`);
};

export { noteFolds };
