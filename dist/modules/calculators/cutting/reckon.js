import { clothOf } from '../../ledger/cloth.js';
import { Ledger } from '../../ledger/ledger.js';
import { inches } from '../../ledger/quantity.js';
import { ONE } from '../../measure/exact.js';
import { planCloth } from '../../planner/plan.js';
import { readCutList } from './cut-list.js';
import { noteFolds } from './folds.js';
import { lettersOf, planFabrics, noteMarks, cautionsOf, summaryOf, boughtFor } from './planned.js';
import { cuttingFields } from './shape.js';
import { sheetOf } from './sheets.js';

/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back.
 */
const reckon = (given = {}, plan = planCloth) => {
    const input = given ?? {};
    const ledger = new Ledger(cuttingFields, input);
    return ledger.finish(() => {
        const { list, mark, shrinkage, seam, oneWay } = ledger.values;
        ledger.given('list', 'sheet');
        const listed = ledger.blame('list', () => readCutList(list, { style: ledger.style, mark, seam }));
        const sheet = sheetOf(ledger, ONE.sub(shrinkage));
        const cloth = sheet ? clothOfSheet(sheet) : clothOf(ledger);
        ledger.given('oneWay', 'seam', 'ruler', 'mat', 'mark', 'shrinkage', 'increment', 'price', 'currency');
        const job = {
            ledger,
            source: 'list',
            from: ['oneWay'],
            input,
            plan,
            sheet,
            cloth,
            turn: !oneWay,
            isOne: lettersOf(listed).length === 1,
        };
        const fabrics = planFabrics(job, listed);
        noteMarks(ledger, listed, mark);
        noteFolds(ledger, fabrics);
        ledger.notes.push(...cautionsOf(input.caution));
        return {
            ...boughtFor(job, fabrics),
            layout: fabrics[0]?.layout ?? [],
            fabrics,
            cuts: fabrics.flatMap(({ pieces }) => pieces),
            summary: summaryOf(job, fabrics),
            used: { ...(sheet ? {} : { cloth }), sheet, oneWay },
        };
    });
};
/** A sheet as cloth, in its size after the wash. */
const clothOfSheet = ({ width }) => ({
    width: inches(width),
    sold: inches(width),
    kept: ONE,
    washed: (length) => length,
    toBuy: (length) => length,
});

export { reckon };
