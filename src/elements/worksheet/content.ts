/** The nodes that other markup passes on to an element, if it is a slot. */
const passedTo = (element: Element): Element[] =>
  'assignedElements' in element ? (element as HTMLSlotElement).assignedElements() : [];

/** A part reads the table inside it by itself. There may be hundreds of cells in it, and no other part. */
const isReadByPart = ({ localName, parentElement }: Element): boolean =>
  localName === 'table' && !!parentElement && 'calculator' in parentElement;

/** The elements in a worksheet as the reader sees them, with slots filled. A worksheet inside it keeps its own. */
export const contentOf = (worksheet: Element): Element[] => {
  const passed = passedTo(worksheet);
  return (passed[0] ? passed : [...worksheet.children]).flatMap((inner) =>
    inner.localName === 'quilt-worksheet' || isReadByPart(inner) ? [] : [inner, ...contentOf(inner)],
  );
};

/** What the slots among these elements bring in from elsewhere. */
export const passedOn = (content: Element[]): Element[] => content.flatMap(passedTo);
