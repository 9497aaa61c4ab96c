// The post's own script: a quilt of another size goes on from the step that makes it to the steps that need it.
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

/** Hands the size that a step ends with on to these steps, once it is another; not what is still being mended. */
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
  // What a script sets fires no event: the steps after the borders are told of a larger top here too.
  top.addEventListener(type, () => {
    toBorders();
    toRest();
  });
  borders.addEventListener(type, toRest);
}
