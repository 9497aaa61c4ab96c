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
 * so what stands there makes room.
 * @returns whether it stays, until {@link isTakenOver}.
 */
const takeOver = (element) => {
    const { shadowRoot, constructor } = element;
    if (constructor.observedAttributes.includes('defer-hydration'))
        served.add(element);
    else
        shadowRoot.replaceChildren();
};
const isTakenOver = (element) => void served.delete(element);
/** On a server an element can ask what stands around it by an event only; a worksheet answers this one. */
const ASKED = 'quilt-worksheet';
/** Whether sizes may flow to an element from a worksheet, which it may itself be. */
const isInWorksheet = (element) => isServer
    ? !element.dispatchEvent(new Event(ASKED, { bubbles: true, cancelable: true }))
    : !!element.closest('quilt-worksheet');
/** Lets a worksheet on a server answer {@link isInWorksheet}. */
const answerOnServer = (worksheet) => {
    if (!isServer)
        return;
    // Events of what stands inside come by way of it.
    worksheet.attachShadow({ mode: 'open' });
    worksheet.addEventListener(ASKED, (event) => event.preventDefault());
};

export { answerOnServer, isAsServed, isInWorksheet, isTakenOver, takeOver };
