import { isServer, type ReactiveElement } from 'lit';

/** The sheets of each page by their names, in the order in which they came. */
const sheets = new WeakMap<Document, Map<string, ReactiveElement[]>>();
const names = new WeakMap<ReactiveElement, string>();

/**
 * A name for this sheet that no other on the page has. Screen readers list sheets by name. So the second backing is “Backing 2”. A
 * server does not know what else is on its page.
 */
export const nameApart = (sheet: ReactiveElement, name: string): string => {
  if (isServer) return name;
  const page = sheet.ownerDocument;
  const onPage = sheets.get(page) ?? new Map<string, ReactiveElement[]>();
  sheets.set(page, onPage);
  const alike = onPage.get(name) ?? [];
  onPage.set(name, alike);
  names.set(sheet, name);
  const isFree = (other: ReactiveElement): boolean => !other.isConnected || names.get(other) !== name;
  let at = alike.indexOf(sheet);
  if (at < 0) at = alike.findIndex(isFree);
  if (at < 0) at = alike.length;
  alike[at] = sheet;
  return at ? `${name} ${at + 1}` : name;
};
