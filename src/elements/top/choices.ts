import { html, type TemplateResult } from 'lit';
import type { BlockChoice } from '../../calculators/top/choices.js';
import { say } from '../../calculators/top/shape.js';
import { action } from '../../face/cell.js';
import { ruled, type Shown } from '../../face/lists.js';
import { unbroken } from '../../measure/format.js';
import type { Teller } from '../../words/teller.js';

/** The numbers of blocks that come near to the wanted size, each with a button to take it. */
export const choiceList = (
  choices: BlockChoice[],
  { t, take, off }: { t: Teller; take: (choice: BlockChoice) => void; off: boolean },
): TemplateResult => {
  if (!choices[0]) return html`<p>${t.say(say('noBlocksForSize'))}</p>`;
  const heads = (['choiceHead', 'finishedHead', 'differenceHead', 'blocksHead'] as const).map((head) =>
    t.say(say(head)),
  );
  const row = (choice: BlockChoice): Shown[] => [
    action(unbroken(t.say(say('takeBlocks', choice))), () => take(choice), { off }),
    unbroken(t.say(say('finishedSize', { size: choice.finished }))),
    unbroken(t.say(say('difference', choice))),
    `${choice.blocks}`,
  ];
  return ruled(t.say(say('blocksForSize')), heads, choices.map(row));
};
