import { LitElement, nothing } from 'lit';
import { isUnknown } from '../../face/server.js';

/**
 * Declares a fabric of the worksheet around it; shows nothing itself. Parts name it by its letter.
 *
 * @tagname quilt-fabric
 * @fires input - The reader wrote in the shopping list what she has of it; `atHand` already follows it.
 * @fires change - She left that cell with another text.
 */
class QuiltFabric extends LitElement {
    static { this.properties = {
        letter: {},
        name: {},
        fabricWidth: { attribute: 'fabric-width' },
        sheet: {},
        price: {},
        swatch: {},
        atHand: { attribute: 'at-hand' },
    }; }
    render() {
        // On a server, this is how the worksheet learns of it.
        isUnknown(this);
        return nothing;
    }
    updated() {
        this.dispatchEvent(new Event('reckoned', { bubbles: true }));
    }
}

export { QuiltFabric };
