/**
 * Whether a value is of the class with this brand, of whichever copy of the script: a page may have two, and parts of one in a
 * worksheet of the other. `instanceof` by itself knows only its own copy.
 */
export const hasBrand = (value: unknown, brand: string): boolean =>
  typeof value === 'object' && value !== null && 'brand' in value && value.brand === brand;
