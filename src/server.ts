import { tablesWritten } from './elements/cutting/tables-written.js';
import { writeAgain } from './face/server.js';

/**
 * Writes a page on a server, with worksheets and their results, and cutting plans and blocks with their tables. It needs
 * several passes, because an element is written before its content.
 *
 * @param write renders the page, or a piece of it, and gives its HTML, the same each time; called twice or three times:
 *   `() => collectResultSync(render(template))` with `@lit-labs/ssr`.
 * @returns the HTML of the last go. Nothing is thrown but what `write` throws.
 */
export const writeWhole = (write: () => string): string => writeAgain(write, tablesWritten);
