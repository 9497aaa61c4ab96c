import { LitElement, nothing, type PropertyDeclarations } from 'lit';
/**
 * Declares a fabric of the worksheet around it; shows nothing itself. Parts name it by its letter.
 *
 * @tagname quilt-fabric
 * @fires input - The reader wrote in the shopping list what she has of it; `atHand` already follows it.
 * @fires change - She left that cell with another text.
 */
export declare class QuiltFabric extends LitElement {
    static properties: PropertyDeclarations;
    /** The letter that parts name it by: `A`. Required. */
    letter: string | undefined;
    /** What the shop calls it. Default none. */
    name: string | undefined;
    /** Its usable width, selvages off. A length. Default: the worksheet's. */
    fabricWidth: string | number | undefined;
    /**
     * What it is bought in: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Cut lists and blocks that name no sheet of their own
     * then plan its pieces on these. Default: cloth by length.
     */
    sheet: string | undefined;
    /** Price of one yard or metre; with `sheet`, of one sheet. Default none. */
    price: string | number | undefined;
    /**
     * A colour, or the address of a picture, for the fabric key: one that begins with `https://`, `/`, `./`, `../`, `blob:` or
     * `data:image/`, or ends like `.png`. Default none: an empty box to tape a swatch into.
     */
    swatch: string | undefined;
    /**
     * What the reader has of it already: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these with commas between. If the
     * attribute is there, even empty, the shopping list has a cell for it. What the reader writes in the cell is in this property, and
     * the fabric fires `input` and `change`, so that a page can keep it. Nothing is stored. Default none.
     */
    atHand: string | undefined;
    protected render(): typeof nothing;
    protected updated(): void;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-fabric': QuiltFabric;
    }
}
