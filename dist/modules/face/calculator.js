/** `fabricWidth` → `fabric-width`. */
const attributeOf = (key) => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
/** Lit's declarations for a calculator's inputs: an attribute and a property each. */
const propertiesOf = (fields) => Object.fromEntries(Object.entries(fields).map(([key, field]) => [
    key,
    { attribute: attributeOf(key), type: field.kind === 'flag' ? Boolean : String },
]));

export { attributeOf, propertiesOf };
