/**
 * A class that knows its values by a brand. A page may load two copies of the script, and a worksheet of one may hold parts
 * of the other. `instanceof` alone knows only the values of its own copy.
 */
export declare abstract class Branded {
    static [Symbol.hasInstance](value: unknown): boolean;
    abstract get brand(): string;
}
