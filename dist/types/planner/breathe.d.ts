/** Lets the page draw and answer before a long work goes on; unlike a timer, it isn't slowed in a hidden page. */
export declare const breathe: () => Promise<void>;
