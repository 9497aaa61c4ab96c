/** A line of a cut list. */
const CUT_LINE = { in: 'A | square | 3 1/2 | 12', cm: 'A | square | 9 | 12' };

export { CUT_LINE };
