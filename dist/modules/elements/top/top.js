import { reckon } from '../../calculators/top/reckon.js';
import { topFields, say } from '../../calculators/top/shape.js';
import { top, blocksOf } from '../../calculators/top/top.js';
import { propertiesOf } from '../../face/calculator.js';
import { PlanningFace } from '../../face/planning-face.js';
import { isAsServed } from '../../face/server.js';
import { inEnglish } from '../../words/en/english.js';
import { top as top$1 } from '../../words/en/top.js';
import { choiceList } from './choices.js';

/** The blocks of a top. */
const BLOCKS = ['block', 'across', 'down', 'set'];
/**
 * A quilt top's size from its blocks, with sashing, cornerstones and setting triangles.
 *
 * @tagname quilt-top
 */
class QuiltTop extends PlanningFace {
    static { this.properties = propertiesOf(topFields); }
    constructor() {
        super();
        /** Takes as many blocks, as if the reader had typed them. */
        this.#takeBlocks = ({ across, down }) => {
            // The list stays open, and the focus on its button.
            this.setOpen(say('blocksForSize').code, true);
            this.change('across', `${across}`);
            this.change('down', `${down}`);
            this.tellBoth();
        };
        this.calculator = {
            ...top,
            reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
        };
        this.english = inEnglish(top$1);
        this.cornerstones = false;
        this.frame = false;
    }
    /** Its blocks as the attributes say, and as they are now. Undefined if something is wrong. */
    get blocks() {
        const input = this.reckonInput();
        const written = Object.fromEntries(BLOCKS.map((key) => [key, this.written(key) ?? input[key]]));
        const layout = this.answer?.used.layout;
        const now = layout && { count: layout.count, block: layout.block };
        if (BLOCKS.every((key) => written[key] === input[key]))
            return { written: now, now };
        // Nobody asks for their cloth here, so it is not planned.
        return { written: blocksOf({ ...input, ...written }), now };
    }
    /** The numbers of blocks for the wanted size; also before anybody has said how many there are. */
    get #choices() {
        const { answer } = this;
        if (answer)
            return answer.choices;
        return reckon({ ...this.reckonInput(), across: 1, down: 1 }, () => 0).own?.choices;
    }
    ownFolds() {
        const choices = this.#choices;
        if (!choices)
            return [];
        const off = this.off || this.locks('across') || this.locks('down');
        const list = choiceList(choices, { t: this.teller, take: this.#takeBlocks, off });
        return [{ caption: say('blocksForSize'), shown: [list], isOpen: !this.good }];
    }
    /** Takes as many blocks, as if the reader had typed them. */
    #takeBlocks;
}

export { QuiltTop };
