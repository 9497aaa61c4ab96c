import { isServer, type ReactiveElement } from 'lit';
import { afterFrame } from './after-frame.js';
import { DrawQueue } from './draw-queue.js';

/** Milliseconds of drawing before the page has its turn again: the next key does not wait for what nobody sees. */
const SLICE = 1;

/** Elements that are off the screen. */
const away = new WeakSet<Element>();

const observer =
  isServer || typeof IntersectionObserver === 'undefined'
    ? undefined
    : new IntersectionObserver((entries) => {
        for (const { target, isIntersecting } of entries) {
          const element = ownerOf(target);
          if (isIntersecting) away.delete(element);
          else away.add(element);
        }
      });

/** The element that a box inside it belongs to. */
const ownerOf = (box: Element): Element => (box.getRootNode() as ShadowRoot).host ?? box;

/** What an element shows of its own: a worksheet also holds its parts. */
const boxOf = (element: Element): Element | null | undefined => element.shadowRoot?.querySelector('section');

/** Follows whether what an element shows is on the screen. */
export const follow = (element: Element): void => {
  const box = boxOf(element);
  if (box) observer?.observe(box);
};

/** Stops that. */
export const unfollow = (element: Element): void => {
  const box = boxOf(element);
  if (box) observer?.unobserve(box);
  away.delete(element);
};

/** Whether nobody can see an element. Until the browser knows, somebody can. A page in the background draws no frame to wait for. */
const isOutOfSight = (element: Element): boolean => away.has(element) && !document.hidden;

const queue = new DrawQueue(afterFrame, SLICE);

/** Those whose next drawing may wait while nobody sees them: neither page nor reader has changed them. */
const patient = new WeakSet<Element>();
/** Those in which nothing has changed but what flows in. The worksheet around them has reckoned with that already. */
const flowAlone = new WeakSet<EventTarget>();

/** An element asks to be drawn again, since a property of this name has changed. Without a name, something inside it has. */
export const asksFor = (element: ReactiveElement, name: PropertyKey | undefined): void => {
  const isFlow = name === 'flow';
  if (!element.isUpdatePending)
    for (const set of [patient, flowAlone])
      if (isFlow) set.add(element);
      else set.delete(element);
  if (isFlow) return;
  flowAlone.delete(element);
  if (name === undefined) return;
  drawSoon(element);
};

export const isFlowAlone = (element: EventTarget | null): boolean => !!element && flowAlone.has(element);

/** An element is asked to draw itself again after all that it shows was reckoned. */
export const isPatient = (element: Element): boolean => patient.has(element);

/** Draws an element again, in its time. */
export const drawInTime = (element: ReactiveElement): void => {
  const isFirst = !element.isUpdatePending;
  element.requestUpdate();
  if (isFirst) patient.add(element);
};

export const canWait = (element: Element): boolean => patient.has(element) && isOutOfSight(element);

/** Draws an element that is out of sight after those that are in sight. */
export const drawLater = (element: Element, draw: () => void): Promise<void> => queue.add(element, draw);

/** Somebody asks for it: it is drawn in this turn. */
export const drawSoon = (element: Element): void => {
  patient.delete(element);
  if (queue.has(element)) queueMicrotask(() => queue.now(element));
};
