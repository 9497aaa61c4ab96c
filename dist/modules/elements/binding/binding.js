import { binding } from '../../calculators/binding/binding.js';
import { bindingFields } from '../../calculators/binding/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { Face } from '../../face/face.js';
import { binding as binding$1 } from '../../words/en/binding.js';
import { inEnglish } from '../../words/en/english.js';

/**
 * Strips and cloth for a quilt's binding: double-fold or single-fold, cut straight or on the bias.
 *
 * @tagname quilt-binding
 */
class QuiltBinding extends Face {
    constructor() {
        super(...arguments);
        this.calculator = binding;
        this.english = inEnglish(binding$1);
    }
    static { this.properties = propertiesOf(bindingFields); }
}

export { QuiltBinding };
