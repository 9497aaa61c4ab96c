import { isServer } from 'lit';

/** Elements that stand as a server wrote them. */
const served = new WeakSet();
/**
 * Whether only attributes count as yet: on a server, which knows neither what stands inside an element nor what stands around
 * it, and in the first render over its writing, which has to find the same.
 */
const isAsServed = (element) => isServer || served.has(element);
/**
 * Takes over what a server wrote. Lit does it if `@lit-labs/ssr-client` taught it so; by itself it would write a second time,
 * so what stands there makes room. So it does where what is written came from elsewhere than the attributes: in a worksheet,
 * where a part may be told its size at any time, and where a cut list may stand in a table.
 * @returns whether it stays, until {@link isTakenOver}.
 */
const takeOver = (element) => {
    const { shadowRoot, constructor } = element;
    const stays = constructor.observedAttributes.includes('defer-hydration') &&
        !element.matches(`${WORKSHEET}, ${WORKSHEET} *, quilt-cutting:not([list])`);
    if (stays)
        served.add(element);
    else
        shadowRoot.replaceChildren();
    return stays;
};
const isTakenOver = (element) => void served.delete(element);
const WORKSHEET = 'quilt-worksheet';
/**
 * Whether an element is in a worksheet, or is one, whose sizes a server does not know. It can ask what stands around it by an
 * event only; {@link answerOnServer} answers.
 */
const isUnknown = (element) => isServer && !element.dispatchEvent(new Event(WORKSHEET, { bubbles: true, cancelable: true }));
const heardIn = new WeakMap();
/** What is being written for the first time, to hear of it; and what was heard, for the second time. */
let hearing;
let known;
/** The parts and fabrics in a worksheet, as far as a server heard of them. */
const insideOnServer = (worksheet) => heardIn.get(worksheet)?.inside ?? [];
/**
 * Lets a worksheet on a server answer those inside it. In a second writing they are given what the first came to.
 * @param know lets the worksheet take on what the same one of the first writing knows, which is reckoned then.
 */
const answerOnServer = (worksheet, know) => {
    if (!isServer)
        return;
    // Events of what stands inside come by way of it.
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
/** The tables of all cutting plans of a page, in the order in which those are made. */
let tables;
/** What stands in the table of the cutting plan that is being made, as far as a server knows. */
const tableOnServer = () => tables?.next().value;
/**
 * Writes a page again and again on a server, each time knowing more: first nothing, then what stands in tables, then what
 * stands in worksheets.
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
