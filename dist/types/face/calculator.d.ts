import type { PropertyDeclarations } from 'lit';
import type { Fields } from '../ledger/field.js';
/** `fabricWidth` → `fabric-width`. */
export declare const attributeOf: (key: string) => string;
/** Lit's declarations for a calculator's inputs: an attribute and a property each. */
export declare const propertiesOf: (fields: Fields) => PropertyDeclarations;
