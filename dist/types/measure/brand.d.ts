/**
 * A class whose values are known by a brand, of whichever copy of the script they are: a page may have two, and parts of one in a
 * worksheet of the other. `instanceof` by itself knows only its own copy.
 */
export declare abstract class Branded {
    static [Symbol.hasInstance](value: unknown): boolean;
    abstract get brand(): string;
}
