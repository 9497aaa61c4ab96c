/** What the reader's ruler marks; cut sizes fall on it. */
export declare const markField: {
    mark: import("./field.js").Field<import("fraction.js").default>;
};
/** How strips are sewn end to end. */
export declare const joinField: import("./field.js").Field<"diagonal" | "straight"> & {
    options: readonly ("diagonal" | "straight")[];
};
