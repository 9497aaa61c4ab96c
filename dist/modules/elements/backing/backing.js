import { backing } from '../../calculators/backing/backing.js';
import { backingFields } from '../../calculators/backing/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { inEnglish } from '../../words/en/english.js';
import { backing as backing$1 } from '../../words/en/backing.js';

/**
 * Cloth for a quilt's back: panels, seams, every layout that is possible, and what to buy.
 *
 * @tagname quilt-backing
 */
class QuiltBacking extends Face {
    static { this.properties = propertiesOf(backingFields); }
    constructor() {
        super();
        this.calculator = backing;
        this.english = inEnglish(backing$1);
        this.oneWay = false;
        this.piecedStrip = false;
    }
}

export { QuiltBacking };
