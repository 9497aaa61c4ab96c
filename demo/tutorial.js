// The post's own script. If the size of the quilt changes in one step, it goes on to the steps that need it.
const [top, borders, ...rest] = [
  'quilt-top',
  'quilt-borders',
  'quilt-batting',
  'quilt-backing',
  'quilt-binding',
].map((name) => document.querySelector(name));
await Promise.all(
  [...document.querySelectorAll(':not(:defined)')].map((at) => customElements.whenDefined(at.localName)),
);

/** Gives the size of one step to the next steps, if it has changed and has no error. */
const handOn = (step, next) => {
  let before = JSON.stringify(step.result.finished);
  return () => {
    const { finished } = step.result;
    const now = JSON.stringify(finished);
    if (!now || now === before) return;
    before = now;
    for (const each of next) Object.assign(each, finished);
  };
};
const toBorders = handOn(top, [borders]);
const toRest = handOn(borders, rest);

for (const type of ['input', 'change']) {
  // A value that a script sets fires no event. So we tell the steps after the borders of a larger top ourselves.
  top.addEventListener(type, () => {
    toBorders();
    toRest();
  });
  borders.addEventListener(type, toRest);
}
