import { render } from 'lit';
import { giveStyles } from './shadow-styles.js';

/**
 * Prints one element alone. It puts a copy, or the paper version, into a frame of its own, so that the rest of the page is not
 * printed.
 */
const printAlone = (sheet, title, paper) => {
    const frame = document.createElement('iframe');
    frame.style.cssText = 'position:fixed;inset-inline-start:-99rem;inline-size:44rem;border:0';
    document.body.append(frame);
    const view = frame.contentWindow;
    const page = view.document;
    page.title = title;
    page.documentElement.lang = document.documentElement.lang;
    const { direction, fontFamily } = getComputedStyle(sheet.host);
    Object.assign(page.body.style, { direction, fontFamily, margin: 0 });
    const copy = page.body.appendChild(page.createElement('div')).attachShadow({ mode: 'open' });
    if (paper)
        render(paper, copy);
    // A copied cell keeps its text, because the text is its default too.
    else
        for (const node of sheet.childNodes)
            copy.append(page.importNode(node, true));
    giveStyles(copy, sheet.host);
    view.onafterprint = () => setTimeout(() => frame.remove());
    view.print();
};

export { printAlone };
