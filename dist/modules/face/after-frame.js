import { breathe } from '../planner/breathe.js';

/** After the next frame of the page, so that what the reader waits for is on the screen. A page in the background has no frames. */
const afterFrame = async () => {
    if (document.hidden)
        return breathe();
    const over = new AbortController();
    await new Promise((done) => {
        requestAnimationFrame(() => setTimeout(done));
        document.addEventListener('visibilitychange', done, { signal: over.signal });
    });
    over.abort();
};

export { afterFrame };
