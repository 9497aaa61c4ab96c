/** The cut list in the table of each cutting plan that a server wrote, in that order. */
export declare const tablesWritten: (html: string) => (string[][] | undefined)[];
