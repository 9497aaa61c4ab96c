/** Registers an element once; a second load, or another build, leaves the first in place. */
export declare const define: (name: string, element: CustomElementConstructor) => void;
