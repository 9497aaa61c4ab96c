import { drawBinding } from '../../drawing/binding.js';
import { reckonBinding, bindingFields } from '../../reckon/binding.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';

/**
 * Strips and cloth for a quilt's binding: double-fold or single-fold, cut straight or on the bias.
 *
 * @tagname quilt-binding
 */
class QuiltBinding extends QuiltSheet {
    constructor() {
        super(...arguments);
        this.calculator = {
            title: 'Binding',
            fields: bindingFields,
            reckon: reckonBinding,
            draw: (result, style) => [drawBinding(result, style)],
        };
    }
    static { this.properties = propertiesOf(bindingFields); }
}

export { QuiltBinding };
