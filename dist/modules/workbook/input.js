/** A list with nothing on it. */
const NOTHING = {
    fabrics: [],
    parts: [],
    items: [],
    makers: [],
    troubles: [],
    unfinished: [],
    named: [],
};

export { NOTHING };
