// Shows beside each recipe the very text that runs there, to copy.
import { allDefined, isWhole, made, showSnippet, sourceOf } from './live.js';

/** Where an author puts the files. */
const FOLDER = '/quilt-reckoner/';
const loader = `<script type="module" src="${FOLDER}quilt-loader.js"></script>`;

showSnippet(document.querySelector('#loader'), 'the line for every page')(loader);

for (const recipe of document.querySelectorAll('.recipe')) {
  const live = recipe.querySelector('.live');
  const snippet = made('div');
  // The first recipe is whole: the line for every page, and the calculator.
  const text = sourceOf(live);
  showSnippet(
    snippet,
    recipe.querySelector('h2').textContent,
  )(recipe.id === 'post' ? `${loader}\n\n${text}` : text);
  const pair = made('div', { className: 'pair' });
  live.replaceWith(pair);
  pair.append(snippet, live);
}

// This page has no basket, so it says what the form would send there.
document.querySelector('#shop form').addEventListener('submit', (event) => {
  event.preventDefault();
  const sent = [...new FormData(event.target)].map(([name, value]) => `${name}=${value}`).join('&');
  document.querySelector('#sent').textContent = `The form sends ${sent}`;
});

await allDefined();
isWhole();
