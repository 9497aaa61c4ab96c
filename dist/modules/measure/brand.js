/**
 * Whether a value is of the class with this brand, of whichever copy of the script: a page may have two, and parts of one in a
 * worksheet of the other. `instanceof` by itself knows only its own copy.
 */
const hasBrand = (value, brand) => typeof value === 'object' && value !== null && 'brand' in value && value.brand === brand;

export { hasBrand };
