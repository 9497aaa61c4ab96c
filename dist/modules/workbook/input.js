/** A list with nothing on it. */
const NOTHING = {
    fabrics: [],
    parts: [],
    items: [],
    troubles: [],
    unfinished: [],
    named: [],
};

export { NOTHING };
