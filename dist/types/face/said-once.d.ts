import { type ReactiveElement } from 'lit';
export declare const comesFromServer: (element: ReactiveElement) => void;
/**
 * Whether this element says something that a page needs to read only once. The first on the page that wants to say it does, until it
 * has left the page or no longer wants to. Once it is drawn, none that comes later takes its place.
 */
export declare const saysForAll: (element: ReactiveElement, what: string, wants?: boolean) => boolean;
/**
 * Whether this sheet says how amounts are meant, for all of its page: the first does, also while its script is still on its way. So the
 * note has the same place in whatever order the scripts come.
 */
export declare const saysHowMeant: (element: ReactiveElement) => boolean;
