import { COTTON_WIDTH, SLEEVE_STRIP } from '../../trade/conventions.js';

const STRIPS = { one: 'strip', other: 'strips' };
/** The hanging sleeve's words in English. */
const sleeve = {
    title: 'Hanging sleeve',
    labels: {
        stripWidth: 'Strip, cut width',
        short: 'Short of each side',
        hem: 'Each turn of a hem',
        label: 'Label, finished size',
        labelWidth: 'Label, cut width',
        labelLength: 'Label, cut length',
        finished: 'Sleeve, finished length',
        cutLength: 'Cut length',
        depth: 'Depth when it lies flat',
        seam: 'Seam allowance',
        strips: 'Strips across the cloth',
    },
    hints: {
        stripWidth: {
            in: '6 1/2 in for a small quilt; shows may ask for 9 in',
            cm: '16.5 cm for a small quilt; shows may ask for 23 cm',
        },
        short: 'so that the rod shows at both ends',
        hem: 'each end is turned under twice',
        label: 'for the back of the quilt, like 4 x 6',
        seam: 'for the joins, the tube and round the label',
    },
    options: {},
    entries: {},
    sentences: {
        tooNarrow: ({ width }, t) => `A quilt ${t.l(width)} wide leaves no room for a sleeve. Write a wider quilt, like ${t.usual({ in: '40 in', cm: '100 cm' })}, or less beside “Short of each side”.`,
        seamsTakeAll: ({ strip }, t) => `Two seams leave nothing of a strip ${t.l(strip)} wide. Write a wider strip, like ${t.usual(SLEEVE_STRIP)}.`,
        joinsTakeAll: ({ cloth }, t) => `Two seams leave nothing of cloth ${t.l(cloth)} wide. Write wider cloth, like ${t.usual(COTTON_WIDTH)}.`,
        stripsReach: ({ reach, need }, t) => `${t.reckoned(reach)} ≥ ${t.l(need)}`,
        labelTooWide: ({ most, room }, t) => `This label does not fit on ${t.l(most)}, the narrower of the cloth and the quilt. ${room.lt(2) ? 'Leave its cell empty' : `Write a smaller one, like ${room.lt(6) ? t.forUnits({ in: '2 x 2 in', cm: '5 x 5 cm' }) : t.forUnits({ in: '4 x 6 in', cm: '10 x 15 cm' })}`}.`,
        labelBeside: 'The label fits beside the sleeve, at the end of its strip.',
        labelTitle: 'Label',
        labelPiece: 'label',
        sleeveStrip: 'sleeve',
        stripToJoin: 'sleeve strip, to join end to end',
        seeLeftover: 'First see whether what is left of the backing is large enough for the sleeve.',
        summary: ({ strips, finished, depth, label }, t) => `${t.many(strips, STRIPS)} for a sleeve ${t.l(finished)} long and ${t.l(depth)} deep${label ? `, and a label of ${t.size(label)}` : ''}.`,
        picture: ({ summary }, t) => `The quilt’s top edge from behind. ${t.say(summary)}`,
        sleeve: 'sleeve',
        sleeveSide: ({ side }, t) => `sleeve ${t.l(side)}`,
    },
};

export { sleeve };
