import type { PropertyDeclarations } from 'lit';
import type { Fields } from '../ledger/field.js';

/** `fabricWidth` → `fabric-width`. */
export const attributeOf = (key: string): string =>
  key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Lit's declarations for a calculator's inputs: an attribute and a property each. */
export const propertiesOf = (fields: Fields): PropertyDeclarations =>
  Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [
      key,
      { attribute: attributeOf(key), type: field.kind === 'flag' ? Boolean : String },
    ]),
  );
