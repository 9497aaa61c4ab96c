/** Begins what is said of a layout that is not ready yet. */
const PLANNING = 'The layout is being planned';

export { PLANNING };
