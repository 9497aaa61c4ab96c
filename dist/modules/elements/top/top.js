import { reckon } from '../../calculators/top/reckon.js';
import { topFields } from '../../calculators/top/shape.js';
import { top, blocksOf } from '../../calculators/top/top.js';
import { propertiesOf } from '../../face/calculator.js';
import { PlanningFace } from '../../face/planning-face.js';
import { isAsServed } from '../../face/server.js';
import { inEnglish } from '../../words/en/english.js';
import { top as top$1 } from '../../words/en/top.js';

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
}

export { QuiltTop };
