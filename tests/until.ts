/** Once this is so; a test that waits for what never comes is ended by its limit. */
export const until = async (isSo: () => boolean): Promise<void> => {
  while (!isSo()) await new Promise((done) => setTimeout(done, 10));
};
