/** The cut list in the table of each cutting plan that a server wrote, in the order in which it wrote them. */
export declare const tablesWritten: (html: string) => (string[][] | undefined)[];
