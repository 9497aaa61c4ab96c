/** Lets the page draw and react before long work goes on. A timer would do, but browsers slow timers in a hidden page. */
export declare const breathe: () => Promise<void>;
