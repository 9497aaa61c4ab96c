/**
 * A class that knows its values by a brand. A page may load two copies of the script, and a worksheet of one may hold parts
 * of the other. `instanceof` alone knows only the values of its own copy.
 */
class Branded {
    static [Symbol.hasInstance](value) {
        const { brand } = this.prototype;
        return typeof value === 'object' && value !== null && 'brand' in value && value.brand === brand;
    }
}

export { Branded };
