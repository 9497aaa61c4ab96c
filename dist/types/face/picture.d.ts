/** Loads what draws the whole quilt and saves a drawing as a file, when somebody asks for that. In the bundles it is a file of its own; see tests/tools/bundle.mjs. */
export declare const loadPicture: () => Promise<typeof import("./picture-file.js")>;
