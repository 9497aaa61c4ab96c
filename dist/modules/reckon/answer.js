/** The row of this id, where the working has one. */
const rowIn = ({ working }, id) => working.find((row) => row.id === id);
/** The usable width of the cloth that a result was reckoned with, once washed: exact inches. */
const clothWidth = (result) => (rowIn(result, 'washedWidth') ?? rowIn(result, 'fabricWidth'))?.inches ?? '0';

export { clothWidth, rowIn };
