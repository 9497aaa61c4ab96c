import { html } from 'lit';
import { say } from '../../calculators/top/shape.js';
import { action } from '../../face/cell.js';
import { parted } from '../../face/lists.js';
import { unbroken } from '../../measure/format.js';

/** The numbers of blocks that come near to the wanted size, each with a button to take it. */
const choiceList = (choices, { t, take, off }) => {
    if (!choices[0])
        return html `<p>${t.say(say('noBlocksForSize'))}</p>`;
    const heads = ['choiceHead', 'finishedHead', 'differenceHead', 'blocksHead'].map((head) => t.say(say(head)));
    const row = (choice) => {
        const { finished, blocks } = choice;
        const button = action(unbroken(t.say(say('takeBlocks', choice))), () => take(choice), { off });
        const cells = [
            t.say(say('finishedSize', { size: finished })),
            t.say(say('difference', choice)),
            `${blocks}`,
        ];
        return html `<tr> <td data-head=${heads[0] ?? ''}>${button}</td> ${cells.map((text, at) => html `<td data-head=${heads[at + 1] ?? ''}>${unbroken(text)}</td>`)} </tr>`;
    };
    return html `<table part="list"> <caption>${t.say(say('blocksForSize'))}</caption> <thead> <tr> ${heads.map((head) => html `<th scope="col">${parted(head)}</th>`)} </tr> </thead> <tbody> ${choices.map(row)} </tbody> </table>`;
};

export { choiceList };
