/** The nodes that other markup passes on to an element, if it is a slot. */
const passedTo = (element: Element): Element[] =>
  'assignedElements' in element ? (element as HTMLSlotElement).assignedElements() : [];

/** The elements in a worksheet as the reader sees them, with slots filled. A worksheet inside it keeps its own. */
export const contentOf = (worksheet: Element): Element[] => {
  const passed = passedTo(worksheet);
  return (passed[0] ? passed : [...worksheet.children]).flatMap((inner) =>
    inner.localName === 'quilt-worksheet' ? [] : [inner, ...contentOf(inner)],
  );
};

/** The elements that slots in a worksheet bring in from elsewhere. */
export const passedOn = (worksheet: Element): Element[] => contentOf(worksheet).flatMap(passedTo);
