import { borders } from '../../calculators/borders/borders.js';
import { bordersFields } from '../../calculators/borders/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { borders as borders$1 } from '../../words/en/borders.js';
import { inEnglish } from '../../words/en/english.js';

/**
 * Borders round a quilt top: cut lengths, strips, cloth, and the finished size.
 *
 * @tagname quilt-borders
 */
class QuiltBorders extends Face {
    constructor() {
        super(...arguments);
        this.calculator = borders;
        this.english = inEnglish(borders$1);
    }
    static { this.properties = propertiesOf(bordersFields); }
}

export { QuiltBorders };
