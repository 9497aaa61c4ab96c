/** Registers an element once; a second load, or another build, leaves the first in place. */
const define = (name, element) => {
    if (!customElements.get(name))
        customElements.define(name, element);
};

export { define };
