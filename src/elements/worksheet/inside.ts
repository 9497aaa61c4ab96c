/**
 * The worksheet that an element is shown in, or is: around it in its own markup, or around a slot that it is passed on
 * through.
 */
export const worksheetAround = (element: Element): Element | undefined => {
  for (let at: Element | null = element; at; at = at.parentElement) {
    if (at.localName === 'quilt-worksheet') return at;
    const passedTo = at.assignedSlot && worksheetAround(at.assignedSlot);
    if (passedTo) return passedTo;
  }
  return undefined;
};

/** What slots in an element pass on to it from elsewhere. */
export const passedOn = (element: Element): Element[] =>
  [...element.querySelectorAll('slot')].flatMap((slot) => slot.assignedElements());

/** What stands in a worksheet, and not in one inside it. */
export const inside = (worksheet: Element): Element[] => {
  const within = (element: Element): Element[] => [
    ...element.querySelectorAll('*'),
    ...passedOn(element).flatMap((passed) => [passed, ...within(passed)]),
  ];
  return within(worksheet).filter((inner) => worksheetAround(inner) === worksheet);
};
