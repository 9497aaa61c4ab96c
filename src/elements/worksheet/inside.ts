/** What other markup passes on to an element, if it is a slot. */
const passedTo = (element: Element): Element[] =>
  'assignedElements' in element ? (element as HTMLSlotElement).assignedElements() : [];

/** What stands in a worksheet as a reader sees it, slots filled, and not in one inside it. */
export const inside = (worksheet: Element): Element[] => {
  const passed = passedTo(worksheet);
  return (passed[0] ? passed : [...worksheet.children]).flatMap((inner) =>
    inner.localName === 'quilt-worksheet' ? [] : [inner, ...inside(inner)],
  );
};

/** What slots in a worksheet pass on to it from elsewhere. */
export const passedOn = (worksheet: Element): Element[] => inside(worksheet).flatMap(passedTo);
