/** A line of a cut list. */
export declare const CUT_LINE: {
    in: string;
    cm: string;
};
