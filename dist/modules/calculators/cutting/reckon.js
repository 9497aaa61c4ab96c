import { clothOf } from '../../ledger/cloth.js';
import { Ledger } from '../../ledger/ledger.js';
import { planCloth } from '../../planner/plan.js';
import { readCutList } from './cut-list.js';
import { noteFolds } from './folds.js';
import { jobFor, lettersOf, planFabrics, noteMarks, cautionsOf, summaryOf, boughtFor } from './planned.js';
import { cuttingFields } from './shape.js';
import { sheetsOf, clothOfSheet } from './sheets.js';

/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back.
 */
const reckon = (given = {}, plan = planCloth) => {
    const input = given ?? {};
    const ledger = new Ledger(cuttingFields, input);
    return ledger.finish(() => {
        const { list, mark, seam, oneWay, week } = ledger.values;
        ledger.given('list', 'sheet');
        const listed = ledger.blame('list', () => readCutList(list, { style: ledger.style, mark, seam }));
        const sheets = sheetsOf(ledger, input);
        const cloth = sheets.own ? clothOfSheet(sheets.own) : clothOf(ledger);
        ledger.given('oneWay', 'seam', 'ruler', 'mat', 'mark', 'week', 'shrinkage', 'increment', 'price', 'currency');
        const about = { ledger, source: 'list', from: ['oneWay'], input, plan, sheets, cloth, turn: !oneWay };
        const job = jobFor(about, lettersOf(listed));
        const fabrics = planFabrics(job, listed);
        noteMarks(ledger, listed, mark);
        noteFolds(ledger, fabrics);
        ledger.notes.push(...cautionsOf(input.caution));
        return {
            ...boughtFor(job, fabrics),
            layout: fabrics[0]?.layout ?? [],
            fabrics,
            week,
            cuts: fabrics.flatMap(({ pieces }) => pieces),
            summary: summaryOf(job, fabrics),
            used: { ...(sheets.own ? {} : { cloth }), oneWay },
        };
    });
};

export { reckon };
