import { sleeveFields } from '../../calculators/sleeve/shape.js';
import { sleeve } from '../../calculators/sleeve/sleeve.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { inEnglish } from '../../words/en/english.js';
import { sleeve as sleeve$1 } from '../../words/en/sleeve.js';

/**
 * The sleeve that a quilt hangs by: its strip, its joins and its cloth. In a worksheet it is cut from what other parts leave, if it
 * fits there, and so is a label.
 *
 * @tagname quilt-sleeve
 */
class QuiltSleeve extends Face {
    constructor() {
        super(...arguments);
        this.calculator = sleeve;
        this.english = inEnglish(sleeve$1);
    }
    static { this.properties = propertiesOf(sleeveFields); }
}

export { QuiltSleeve };
