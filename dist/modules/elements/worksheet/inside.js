/**
 * The worksheet that an element is shown in, or is: around it in its own markup, or around a slot that it is passed on
 * through.
 */
const worksheetAround = (element) => {
    for (let at = element; at; at = at.parentElement) {
        if (at.localName === 'quilt-worksheet')
            return at;
        const passedTo = at.assignedSlot && worksheetAround(at.assignedSlot);
        if (passedTo)
            return passedTo;
    }
    return undefined;
};
/** What slots in an element pass on to it from elsewhere. */
const passedOn = (element) => [...element.querySelectorAll('slot')].flatMap((slot) => slot.assignedElements());
/** What stands in a worksheet, and not in one inside it. */
const inside = (worksheet) => {
    const within = (element) => [
        ...element.querySelectorAll('*'),
        ...passedOn(element).flatMap((passed) => [passed, ...within(passed)]),
    ];
    return within(worksheet).filter((inner) => worksheetAround(inner) === worksheet);
};

export { inside, passedOn, worksheetAround };
