import { type ReactiveElement } from 'lit';
/** Follows whether what an element shows is on the screen. */
export declare const follow: (element: Element) => void;
/** Stops that. */
export declare const unfollow: (element: Element) => void;
/** An element asks to be drawn again, since a property of this name has changed. Without a name, something inside it has. */
export declare const asksFor: (element: ReactiveElement, name: PropertyKey | undefined) => void;
export declare const isFlowAlone: (element: EventTarget | null) => boolean;
/** An element is asked to draw itself again after all that it shows was reckoned. */
export declare const isPatient: (element: Element) => boolean;
/** Draws an element again, in its time. */
export declare const drawInTime: (element: ReactiveElement) => void;
export declare const canWait: (element: Element) => boolean;
/** Draws an element that is out of sight after those that are in sight. */
export declare const drawLater: (element: Element, draw: () => void) => Promise<void>;
/** Somebody asks for it: it is drawn in this turn. */
export declare const drawSoon: (element: Element) => void;
