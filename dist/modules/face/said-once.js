import { isServer } from 'lit';

/** In each page, the element that says something for all of them. */
const speakers = new WeakMap();
/** Those that a server wrote. A server does not know what else is on its page, so each says it there, and goes on so. */
const served = new WeakSet();
const comesFromServer = (element) => void served.add(element);
/**
 * Whether this element says something that a page needs to read only once. The first on the page that wants to say it does, until it
 * has left the page or no longer wants to. Once it is drawn, none that comes later takes its place.
 */
const saysForAll = (element, what, wants = true) => {
    if (isServer || served.has(element))
        return wants;
    const page = element.ownerDocument;
    const spoken = speakers.get(page) ?? new Map();
    speakers.set(page, spoken);
    const speaker = spoken.get(what);
    if (speaker && speaker !== element && speaker.isConnected) {
        const isBefore = speaker.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING;
        if (speaker.hasUpdated || !isBefore)
            return false;
    }
    if (wants)
        spoken.set(what, element);
    else
        spoken.delete(what);
    return wants;
};
/** The sheets that say how their amounts are meant. */
const SHEETS = ['backing', 'batting', 'binding', 'block', 'borders', 'cutting', 'sleeve', 'top', 'worksheet']
    .map((name) => `quilt-${name}`)
    .join();
/**
 * Whether this sheet says how amounts are meant, for all of its page: the first does, also while its script is still on its way. So the
 * note has the same place in whatever order the scripts come.
 */
const saysHowMeant = (element) => {
    if (isServer || served.has(element))
        return true;
    const first = element.ownerDocument.querySelector(SHEETS);
    return first ? first === element : saysForAll(element, 'planning');
};

export { comesFromServer, saysForAll, saysHowMeant };
