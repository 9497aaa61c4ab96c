import { html } from 'lit';
import { say } from '../../calculators/top/shape.js';
import { action } from '../../face/cell.js';
import { ruled } from '../../face/lists.js';
import { unbroken } from '../../measure/format.js';

/** The numbers of blocks that come near to the wanted size, each with a button to take it. */
const choiceList = (choices, { t, take, off }) => {
    if (!choices[0])
        return html `<p>${t.say(say('noBlocksForSize'))}</p>`;
    const heads = ['choiceHead', 'finishedHead', 'differenceHead', 'blocksHead'].map((head) => t.say(say(head)));
    const row = (choice) => [
        action(unbroken(t.say(say('takeBlocks', choice))), () => take(choice), { off }),
        unbroken(t.say(say('finishedSize', { size: choice.finished }))),
        unbroken(t.say(say('difference', choice))),
        `${choice.blocks}`,
    ];
    return ruled(t.say(say('blocksForSize')), heads, choices.map(row));
};

export { choiceList };
