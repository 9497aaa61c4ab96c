// The numbers in the words are those of the calculator beside them, and follow it.
import { allDefined, isWhole, onOneLine } from './live.js';

await allDefined();

/** The calculator that a place in the words speaks of: the one of its section, or the one that it names. */
const calculatorFor = (place) => {
  const section = place.dataset.of ? document.getElementById(place.dataset.of) : place.closest('.rule');
  return section.querySelector('.live').firstElementChild;
};

const follow = () => {
  for (const place of document.querySelectorAll('[data-row], [data-how]')) {
    const { row, how } = place.dataset;
    const found = calculatorFor(place).result.working.find(({ id }) => id === (row ?? how));
    // Without an answer there is no number to give.
    place.textContent = onOneLine((row ? found?.value : found?.how) || '…');
  }
};

for (const words of document.querySelectorAll('main :is(p, li, dd)')) {
  if (words.closest('.live')) continue;
  for (const node of words.childNodes) if (node.nodeType === Node.TEXT_NODE) node.data = onOneLine(node.data);
}
for (const type of ['input', 'change']) document.addEventListener(type, follow);
follow();
isWhole();
