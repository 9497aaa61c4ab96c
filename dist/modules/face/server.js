import { isServer } from 'lit';

/** Elements that still are as a server wrote them. */
const served = new WeakSet();
/**
 * Whether only attributes count. They do on a server, which sees neither the content of an element nor the page around it. They do
 * in the first render in the browser too, which has to find the same as the server.
 */
const isAsServed = (element) => isServer || served.has(element);
/**
 * Takes over what a server wrote. Lit can do that if `@lit-labs/ssr-client` is loaded. Without it, Lit would write everything a second
 * time, so we remove the server's nodes first. We remove them too if the values do not come from attributes: in a worksheet, which
 * may give a part its size at any time, and for pieces in a table.
 * @returns whether the server's nodes stay, until {@link isTakenOver}.
 */
const takeOver = (element) => {
    const { shadowRoot, constructor } = element;
    const stays = constructor.observedAttributes.includes('defer-hydration') &&
        !element.matches(`${WORKSHEET}, ${WORKSHEET} *, quilt-cutting:not([list]), quilt-block:not([chart])`);
    if (stays)
        served.add(element);
    else
        shadowRoot.replaceChildren();
    return stays;
};
const isTakenOver = (element) => void served.delete(element);
const WORKSHEET = 'quilt-worksheet';
/**
 * Whether an element is a worksheet or in one, and the server does not know its sizes yet. On a server an element can ask its
 * surroundings only by an event. {@link answerOnServer} answers it.
 */
const isUnknown = (element) => isServer && !element.dispatchEvent(new Event(WORKSHEET, { bubbles: true, cancelable: true }));
const heardIn = new WeakMap();
/** The worksheets of the pass that is running, and those of the pass before it. */
let hearing;
let known;
/** The parts and fabrics in a worksheet, as far as the server has seen them. */
const insideOnServer = (worksheet) => heardIn.get(worksheet)?.inside ?? [];
/**
 * Lets a worksheet on a server answer its parts. In the second pass they get the results of the first.
 * @param know gives the worksheet what the same one of the first pass knows, and lets it reckon.
 */
const answerOnServer = (worksheet, know) => {
    if (!isServer)
        return;
    // The events of its parts pass through it.
    worksheet.attachShadow({ mode: 'open' });
    const before = known?.shift();
    const heard = before ?? { worksheet, inside: [] };
    hearing?.push(heard);
    heardIn.set(worksheet, heard);
    const given = heard.inside[Symbol.iterator]();
    worksheet.addEventListener(WORKSHEET, (event) => {
        event.stopPropagation();
        const asking = event.target;
        if (!before)
            event.preventDefault();
        if (asking === worksheet) {
            if (before)
                know(before.worksheet);
        }
        else if (before)
            asking.flow = given.next().value?.flow;
        else
            heard.inside.push(asking);
    });
};
/** The tables of all cutting plans and blocks of a page, in the order in which they are made. */
let tables;
/** The table of the element that is being made, as far as the server knows it. */
const tableOnServer = () => tables?.next().value;
/**
 * Writes a page several times on a server. Each pass knows more: first nothing, then the tables, then the worksheets.
 * @param tablesIn finds the tables in the HTML.
 */
const writeAgain = (write, tablesIn) => {
    try {
        hearing = [];
        const found = tablesIn(write());
        if (found.some(Boolean)) {
            hearing = [];
            tables = found.values();
            write();
        }
        known = hearing;
        hearing = undefined;
        tables = found.values();
        return write();
    }
    finally {
        hearing = known = tables = undefined;
    }
};

export { answerOnServer, insideOnServer, isAsServed, isTakenOver, isUnknown, tableOnServer, takeOver, writeAgain };
