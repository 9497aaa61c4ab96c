/** Whether a text is a colour. A server cannot know that, so there every text counts as one. */
export declare const isColour: (swatch: string) => boolean;
/** The swatches of fabrics, by letter: a colour, or the address of a picture. */
export type Swatches = Readonly<Record<string, string>>;
/** What the page wrote as the swatch of a fabric, or empty. */
export declare const swatchIn: (swatches: Swatches | undefined, letter: string | undefined) => string;
/** What a fabric's pieces are filled with in a drawing. */
export type Fill = 
/** A colour that stands by itself, and whether light words are read better on it. */
{
    colour: string;
    isDark: boolean;
} | {
    picture: string;
};
/** What the pieces of a fabric are filled with. Undefined without a swatch, and on a server, which knows no colours. */
export declare const fillOf: (swatches: Swatches | undefined, letter: string | undefined) => Fill | undefined;
