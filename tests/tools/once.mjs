/**
 * Calls a function only once for each word.
 * @template Word, Made
 * @param {(word: Word) => Made} make
 * @returns {(word: Word) => Made}
 */
export const once = (make) => {
  const made = new Map();
  return (word) => {
    if (!made.has(word)) made.set(word, make(word));
    return made.get(word);
  };
};
