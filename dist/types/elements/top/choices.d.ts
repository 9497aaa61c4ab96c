import { type TemplateResult } from 'lit';
import type { BlockChoice } from '../../calculators/top/choices.js';
import type { Teller } from '../../words/teller.js';
/** The numbers of blocks that come near to the wanted size, each with a button to take it. */
export declare const choiceList: (choices: BlockChoice[], { t, take, off }: {
    t: Teller;
    take: (choice: BlockChoice) => void;
    off: boolean;
}) => TemplateResult;
