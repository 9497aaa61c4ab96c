import { isServer } from 'lit';
import { afterFrame } from './after-frame.js';
import { DrawQueue } from './draw-queue.js';

/** Milliseconds of drawing before the page has its turn again: the next key does not wait for what nobody sees. */
const SLICE = 1;
/** Elements that are off the screen. */
const away = new WeakSet();
const observer = isServer || typeof IntersectionObserver === 'undefined'
    ? undefined
    : new IntersectionObserver((entries) => {
        for (const { target, isIntersecting } of entries) {
            const element = ownerOf(target);
            if (isIntersecting)
                away.delete(element);
            else
                away.add(element);
        }
    });
/** The element that a box inside it belongs to. */
const ownerOf = (box) => box.getRootNode().host ?? box;
/** What an element shows of its own: a worksheet also holds its parts. */
const boxOf = (element) => element.shadowRoot?.querySelector('section');
/** Follows whether what an element shows is on the screen. */
const follow = (element) => {
    const box = boxOf(element);
    if (box)
        observer?.observe(box);
};
/** Stops that. */
const unfollow = (element) => {
    const box = boxOf(element);
    if (box)
        observer?.unobserve(box);
    away.delete(element);
};
/** Whether nobody can see an element. Until the browser knows, somebody can. A page in the background draws no frame to wait for. */
const isOutOfSight = (element) => away.has(element) && !document.hidden;
const queue = new DrawQueue(afterFrame, SLICE);
/** Those whose next drawing may wait while nobody sees them: neither page nor reader has changed them. */
const patient = new WeakSet();
/** Those in which nothing has changed but what flows in. The worksheet around them has reckoned with that already. */
const flowAlone = new WeakSet();
/** An element asks to be drawn again, since a property of this name has changed. Without a name, something inside it has. */
const asksFor = (element, name) => {
    const isFlow = name === 'flow';
    if (!element.isUpdatePending)
        for (const set of [patient, flowAlone])
            if (isFlow)
                set.add(element);
            else
                set.delete(element);
    if (isFlow)
        return;
    flowAlone.delete(element);
    if (name === undefined)
        return;
    drawSoon(element);
};
const isFlowAlone = (element) => !!element && flowAlone.has(element);
/** An element is asked to draw itself again after all that it shows was reckoned. */
const isPatient = (element) => patient.has(element);
/** Draws an element again, in its time. */
const drawInTime = (element) => {
    const isFirst = !element.isUpdatePending;
    element.requestUpdate();
    if (isFirst)
        patient.add(element);
};
const canWait = (element) => patient.has(element) && isOutOfSight(element);
/** Draws an element that is out of sight after those that are in sight. */
const drawLater = (element, draw) => queue.add(element, draw);
/** Somebody asks for it: it is drawn in this turn. */
const drawSoon = (element) => {
    patient.delete(element);
    if (queue.has(element))
        queueMicrotask(() => queue.now(element));
};

export { asksFor, canWait, drawInTime, drawLater, drawSoon, follow, isFlowAlone, isPatient, unfollow };
