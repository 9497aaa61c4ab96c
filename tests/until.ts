/** Waits until this is true. If it never is, the time limit of the test ends it. */
export const until = async (isSo: () => boolean): Promise<void> => {
  while (!isSo()) await new Promise((done) => setTimeout(done, 10));
};
