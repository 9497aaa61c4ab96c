// One script for every page of the site: whichever calculator a page holds, its events bubble up to here.
const say = (id, words) => document.querySelector(id).replaceChildren(words);

document.addEventListener(
  'input',
  ({ target }) => target.result?.buy && say('#typed', target.result.buy.text),
);
document.addEventListener('change', ({ target }) => target.value && say('#left', target.value));
document.querySelector('#wider').onclick = () =>
  Object.assign(document.querySelector('quilt-backing'), { width: 80 });
