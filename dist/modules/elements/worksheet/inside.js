/** What other markup passes on to an element, if it is a slot. */
const passedTo = (element) => 'assignedElements' in element ? element.assignedElements() : [];
/** What stands in a worksheet as a reader sees it, slots filled, and not in one inside it. */
const inside = (worksheet) => {
    const passed = passedTo(worksheet);
    return (passed[0] ? passed : [...worksheet.children]).flatMap((inner) => inner.localName === 'quilt-worksheet' ? [] : [inner, ...inside(inner)]);
};
/** What slots in a worksheet pass on to it from elsewhere. */
const passedOn = (worksheet) => inside(worksheet).flatMap(passedTo);

export { inside, passedOn };
