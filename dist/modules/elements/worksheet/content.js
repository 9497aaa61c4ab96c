/** The nodes that other markup passes on to an element, if it is a slot. */
const passedTo = (element) => 'assignedElements' in element ? element.assignedElements() : [];
/** The elements in a worksheet as the reader sees them, with slots filled. A worksheet inside it keeps its own. */
const contentOf = (worksheet) => {
    const passed = passedTo(worksheet);
    return (passed[0] ? passed : [...worksheet.children]).flatMap((inner) => inner.localName === 'quilt-worksheet' ? [] : [inner, ...contentOf(inner)]);
};
/** The elements that slots in a worksheet bring in from elsewhere. */
const passedOn = (worksheet) => contentOf(worksheet).flatMap(passedTo);

export { contentOf, passedOn };
