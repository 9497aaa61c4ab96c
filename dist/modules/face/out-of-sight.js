import { isServer } from 'lit';
import { DrawQueue } from './draw-queue.js';

/** Milliseconds of drawing before the page has its turn again: the next key does not wait for what nobody sees. */
const SLICE = 1;
/** Elements that are off the screen. */
const away = new WeakSet();
const observer = isServer || typeof IntersectionObserver === 'undefined'
    ? undefined
    : new IntersectionObserver((entries) => {
        for (const { target, isIntersecting } of entries)
            if (isIntersecting)
                away.delete(target);
            else
                away.add(target);
    });
/** Follows whether an element is on the screen. */
const follow = (element) => observer?.observe(element);
/** Stops that. */
const unfollow = (element) => {
    observer?.unobserve(element);
    away.delete(element);
};
/** Whether nobody can see an element. Until the browser knows, somebody can. A page in the background draws no frame to wait for. */
const isOutOfSight = (element) => away.has(element) && !document.hidden;
/** After the next frame of the page, or when it goes to the background. */
const afterFrame = () => new Promise((done) => {
    requestAnimationFrame(() => setTimeout(done));
    document.addEventListener('visibilitychange', () => done(), { once: true });
});
const queue = new DrawQueue(afterFrame, SLICE);
/** Draws an element that is out of sight after those that are in sight. */
const drawLater = (element, draw) => queue.add(element, draw);
/** Somebody asks for it: it is drawn at the end of this turn. */
const drawSoon = (element) => {
    if (queue.has(element))
        queueMicrotask(() => queue.now(element));
};

export { drawLater, drawSoon, follow, isOutOfSight, unfollow };
