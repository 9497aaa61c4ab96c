import { render } from 'lit';
import { dress } from './dress.js';

/**
 * Prints one sheet alone: a copy of it, or what stands for it on paper, in a frame of its own, so that the page around it
 * stays off the paper.
 */
const printAlone = (sheet, title, paper) => {
    const frame = document.createElement('iframe');
    frame.style.cssText = 'position:fixed;inset-inline-start:-99rem;inline-size:44rem;border:0';
    document.body.append(frame);
    const inside = frame.contentWindow;
    const page = inside.document;
    page.title = title;
    page.documentElement.lang = document.documentElement.lang;
    const { direction, fontFamily } = getComputedStyle(sheet.host);
    Object.assign(page.body.style, { direction, fontFamily, margin: 0 });
    const copy = page.body.appendChild(page.createElement('div')).attachShadow({ mode: 'open' });
    if (paper)
        render(paper, copy);
    // A copied cell keeps what was typed in it.
    else
        for (const node of sheet.childNodes)
            copy.append(page.importNode(node, true));
    dress(copy, sheet.host);
    inside.onafterprint = () => setTimeout(() => frame.remove());
    inside.print();
};

export { printAlone };
