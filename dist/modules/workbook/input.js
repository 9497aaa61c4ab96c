/** Before anything was gathered. */
const NOTHING = {
    fabrics: [],
    parts: [],
    items: [],
    troubles: [],
    unfinished: [],
    named: [],
};

export { NOTHING };
