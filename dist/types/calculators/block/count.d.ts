/** How many blocks there are. A block that takes what others leave of a top may be left with none. */
export declare const blockCount: import("../../ledger/field.js").Field<number>;
