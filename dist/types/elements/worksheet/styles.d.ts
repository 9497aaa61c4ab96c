/** The fabric key, and what only a printed worksheet shows. */
export declare const worksheetStyles: import("lit").CSSResult;
