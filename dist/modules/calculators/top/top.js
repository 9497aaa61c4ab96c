import { draw } from './draw.js';
import { lists } from './lists.js';
import { reckon } from './reckon.js';
import { topFields, say } from './shape.js';

/** A quilt top from its blocks. */
const top = {
    name: 'top',
    fields: topFields,
    reckon,
    draw,
    lists,
    headline: ({ finished }) => ({ lead: say('finished'), large: say('finishedSize', { size: finished }) }),
    finishes: ({ finished }) => finished,
    takes: ({ parts }, letters) => parts.map(({ fabric, cloth, cuts, used: { kind, plan } }, at) => ({
        ...cloth,
        title: say('partTitle', { kind }),
        fabric: letters[at] ?? letters.at(-1) ?? '',
        need: fabric,
        cuts,
        plan,
    })),
};
/** How many blocks a top has and how large they are, without planning its cloth. Undefined if something is wrong. */
const blocksOf = (input) => {
    const layout = reckon(input, () => 0).own?.used.layout;
    return layout && { count: layout.count, block: layout.block };
};

export { blocksOf, top };
