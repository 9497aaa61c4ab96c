import { isServer } from 'lit';

/** The sheets of each page by their names, in the order in which they came. */
const sheets = new WeakMap();
const names = new WeakMap();
/**
 * A name for this sheet that no other on the page has. Screen readers list sheets by name. So the second backing is “Backing 2”. A
 * server does not know what else is on its page.
 */
const nameApart = (sheet, name) => {
    if (isServer)
        return name;
    const page = sheet.ownerDocument;
    const onPage = sheets.get(page) ?? new Map();
    sheets.set(page, onPage);
    const alike = onPage.get(name) ?? [];
    onPage.set(name, alike);
    names.set(sheet, name);
    const isFree = (other) => !other.isConnected || names.get(other) !== name;
    let at = alike.indexOf(sheet);
    if (at < 0)
        at = alike.findIndex(isFree);
    if (at < 0)
        at = alike.length;
    alike[at] = sheet;
    return at ? `${name} ${at + 1}` : name;
};

export { nameApart };
