/** Follows whether an element is on the screen. */
export declare const follow: (element: Element) => void;
/** Stops that. */
export declare const unfollow: (element: Element) => void;
/** Whether nobody can see an element. Until the browser knows, somebody can. A page in the background draws no frame to wait for. */
export declare const isOutOfSight: (element: Element) => boolean;
/** Draws an element that is out of sight after those that are in sight. */
export declare const drawLater: (element: Element, draw: () => void) => Promise<void>;
/** Somebody asks for it: it is drawn at the end of this turn. */
export declare const drawSoon: (element: Element) => void;
