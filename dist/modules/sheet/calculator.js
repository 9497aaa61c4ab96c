/** The usable width of the cloth that a result was reckoned with, once washed. */
const clothWidth = ({ working }) => ['washedWidth', 'fabricWidth'].map((id) => working.find((row) => row.id === id)?.inches).find(Boolean) ??
    '0';
/** `fabricWidth` → `fabric-width`. */
const attributeOf = (key) => key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
/** Lit's declarations for a calculator's inputs: an attribute and a property each. */
const propertiesOf = (fields) => Object.fromEntries(Object.entries(fields).map(([key, field]) => [
    key,
    { attribute: attributeOf(key), type: field.kind === 'flag' ? Boolean : String },
]));

export { attributeOf, clothWidth, propertiesOf };
