/** After the next frame of the page, so that what the reader waits for is on the screen. A page in the background has no frames. */
export declare const afterFrame: () => Promise<void>;
