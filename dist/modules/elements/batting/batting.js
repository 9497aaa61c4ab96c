import { batting } from '../../calculators/batting/batting.js';
import { battingFields } from '../../calculators/batting/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { batting as batting$1 } from '../../words/en/batting.js';
import { inEnglish } from '../../words/en/english.js';

/**
 * Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed.
 *
 * @tagname quilt-batting
 */
class QuiltBatting extends Face {
    constructor() {
        super(...arguments);
        this.calculator = batting;
        this.english = inEnglish(batting$1);
    }
    static { this.properties = propertiesOf(battingFields); }
}

export { QuiltBatting };
