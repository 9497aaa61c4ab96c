import { type ReactiveElement } from 'lit';
export declare const comesFromServer: (element: ReactiveElement) => void;
/**
 * Whether this element says something that a page needs to read only once. The first on the page that wants to say it does, until it
 * has left the page or no longer wants to. Once it is drawn, none that comes later takes its place.
 */
export declare const saysForAll: (element: ReactiveElement, what: string, wants?: boolean) => boolean;
