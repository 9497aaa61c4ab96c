/**
 * A class whose values are known by a brand, of whichever copy of the script they are: a page may have two, and parts of one in a
 * worksheet of the other. `instanceof` by itself knows only its own copy.
 */
class Branded {
    static [Symbol.hasInstance](value) {
        const { brand } = this.prototype;
        return typeof value === 'object' && value !== null && 'brand' in value && value.brand === brand;
    }
}

export { Branded };
