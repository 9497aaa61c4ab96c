import { type ReactiveElement } from 'lit';
/**
 * A name for this sheet that no other on the page has. Screen readers list sheets by name. So the second backing is “Backing 2”. A
 * server does not know what else is on its page.
 */
export declare const nameApart: (sheet: ReactiveElement, name: string) => string;
