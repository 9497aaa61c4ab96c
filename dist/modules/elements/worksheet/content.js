/** The nodes that other markup passes on to an element, if it is a slot. */
const passedTo = (element) => 'assignedElements' in element ? element.assignedElements() : [];
/** A part reads the table inside it by itself. There may be hundreds of cells in it, and no other part. */
const isReadByPart = ({ localName, parentElement }) => localName === 'table' && !!parentElement && 'calculator' in parentElement;
/** The elements in a worksheet as the reader sees them, with slots filled. A worksheet inside it keeps its own. */
const contentOf = (worksheet) => {
    const passed = passedTo(worksheet);
    return (passed[0] ? passed : [...worksheet.children]).flatMap((inner) => inner.localName === 'quilt-worksheet' || isReadByPart(inner) ? [] : [inner, ...contentOf(inner)]);
};
/** What the slots among these elements bring in from elsewhere. */
const passedOn = (content) => content.flatMap(passedTo);

export { contentOf, passedOn };
