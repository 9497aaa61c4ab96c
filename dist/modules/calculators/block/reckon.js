import { clothOf } from '../../ledger/cloth.js';
import { textOf } from '../../ledger/field.js';
import { Ledger } from '../../ledger/ledger.js';
import { count, inches } from '../../ledger/quantity.js';
import { sum, ZERO, least } from '../../measure/exact.js';
import { planCloth } from '../../planner/plan.js';
import { lettersOf, planFabrics, noteMarks, cautionsOf, summaryOf, boughtFor, needOf } from '../cutting/planned.js';
import { readChart } from './chart.js';
import { PIECES, partsOf } from './patch.js';
import { piecesFor, sizeOf } from './pieces.js';
import { blockFields, say, METHODS } from './shape.js';

/**
 * One block of a quilt, as a chart of fabric letters: what to cut for so many of them, and the cloth of each fabric. Every plan is
 * checked before it is given back.
 */
const reckon = (given = {}, plan = planCloth) => {
    const input = given ?? {};
    const ledger = new Ledger(blockFields, input);
    return ledger.finish(() => {
        const { block, count: blocks, mark, method: code, week } = ledger.values;
        const method = METHODS[code];
        const chart = ledger.blame('chart', () => readChart(ledger.values.chart));
        ledger.given('chart', 'block', 'count', 'method', 'seam');
        const sizes = sizesOf(ledger, chart);
        const cloth = clothOf(ledger);
        ledger.given('mark', 'week', 'shrinkage', 'increment', 'price', 'currency');
        const listed = piecesFor(chart, block, blocks, method, ledger.values);
        const isOne = lettersOf(listed).length === 1;
        const job = { ledger, source: 'chart', from: FROM, input, plan, cloth, turn: true, isOne };
        const fabrics = planFabrics(job, listed);
        sayOtherWays(job, ledger, chart, fabrics);
        noteMarks(ledger, listed, mark);
        if (hasUnlikeSkies(chart, method))
            ledger.note(say('unlikeSkies'));
        ledger.notes.push(...cautionsOf(input.caution));
        const name = textOf(input.name).trim();
        return {
            ...boughtFor(job, fabrics),
            ...sizes,
            count: blocks,
            block,
            columns: chart.columns,
            rows: chart.rows,
            letters: coveredBy(chart, block),
            fabrics,
            week,
            cuts: fabrics.flatMap(({ pieces }) => pieces),
            summary: say('summary', { name, count: blocks, block, says: summaryOf(job, fabrics) }),
            used: { cloth, chart, name },
        };
    });
};
/** The inputs that a plan of a block comes from. */
const FROM = ['block', 'count', 'method'];
/** The sizes of the block and of its cells, with their rows. */
const sizesOf = (ledger, chart) => {
    const { block, seam } = ledger.inputs;
    const { mark } = ledger.values;
    const from = ['chart'];
    const cell = sizeOf({ across: 1, down: 1 }, chart, block.value);
    for (const patch of chart.patches)
        refuseTooSmall(ledger, patch, sizeOf(patch, chart, block.value), mark);
    ledger.row('cell', block.over(chart.columns), { from });
    if (chart.columns !== chart.rows)
        ledger.row('cellLength', block.over(chart.rows), { from });
    const unfinished = ledger.row('unfinished', block.plus(seam.times(2)));
    const patches = chart.patches.reduce((all, { kind }) => all + PIECES[kind], 0);
    ledger.row('patches', count(patches).times(ledger.inputs.count), { from });
    return { cell, unfinished: unfinished.value, patches };
};
/** Refuses a patch that nobody could cut. */
const refuseTooSmall = (ledger, { kind }, { width, length }, mark) => {
    const side = least(width, length);
    const finest = kind === 'quarter' || kind === 'inside' ? side.div(2) : side;
    if (finest.lt(mark))
        ledger.refuse('block', say('patchTooSmall', { patch: { width, length }, mark }));
};
/** What each fabric covers in one block. */
const coveredBy = (chart, block) => {
    const covered = new Map();
    for (const patch of chart.patches) {
        const { width, length } = sizeOf(patch, chart, block);
        const parts = partsOf(patch);
        patch.letters.forEach((fabric, at) => {
            const before = covered.get(fabric) ?? { pieces: 0, area: ZERO };
            covered.set(fabric, {
                fabric,
                pieces: before.pieces + (patch.kind === 'inside' && at ? 4 : 1),
                area: before.area.add(width.mul(length).mul(parts[at] ?? ZERO)),
            });
        });
    }
    return [...covered.values()];
};
const hasUnlikeSkies = ({ patches }, { geese }) => geese === 'four' &&
    patches.some(({ kind, letters: [before, , after] }) => kind === 'goose' && before !== after);
/** Says what the other methods would take, if that differs. */
const sayOtherWays = (job, ledger, chart, fabrics) => {
    const method = METHODS[ledger.values.method];
    const has = (kind) => chart.patches.some((patch) => patch.kind === kind);
    const needs = (other) => {
        const { block, count } = ledger.values;
        const listed = piecesFor(chart, block, count, other, ledger.values);
        const all = lettersOf(listed).map((fabric) => ({
            fabric,
            need: needOf(job, fabric, ofFabric(listed, fabric)),
        }));
        const known = all.flatMap(({ fabric, need }) => (need ? [{ fabric, need }] : []));
        const isSame = fabrics.every(({ fabric, need }) => known.some((one) => one.fabric === fabric && one.need.equals(need)));
        return known.length < all.length || isSame ? undefined : known;
    };
    const from = ['chart', ...FROM];
    if (has('half')) {
        const way = method.halves === 'two' ? 'eight' : 'two';
        const other = needs({ ...method, halves: way });
        if (other)
            ledger.row('halvesOtherwise', inches(sum(other.map(({ need }) => need))), {
                how: say('halvesOtherWay', { way, fabrics: other }),
                from,
            });
    }
    if (has('goose')) {
        const way = method.geese === 'one' ? 'four' : 'one';
        const other = needs({ ...method, geese: way });
        if (other)
            ledger.row('geeseOtherwise', inches(sum(other.map(({ need }) => need))), {
                how: say('geeseOtherWay', { way, fabrics: other }),
                from,
            });
    }
};
const ofFabric = (listed, letter) => listed.filter(({ fabric }) => fabric === letter);

export { reckon };
