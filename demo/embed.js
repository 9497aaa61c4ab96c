// The embed maker: what is set in the live calculator becomes attributes, and its answer the words inside the tags.
const form = document.querySelector('form');
const live = document.querySelector('#live');
const snippet = document.querySelector('#snippet');
const STARTS = {
  backing: { width: '58', length: '70' },
  binding: { width: '58', length: '70' },
  borders: { width: '58', length: '70', borders: '2, 4 1/2' },
  batting: { width: '58', length: '70' },
  top: { block: '12', across: '4', down: '5' },
};
const PAGE_ONLY = ['name', 'fabric', 'lock'];

const property = (attribute) => attribute.replace(/-(.)/g, (_, letter) => letter.toUpperCase());
const escaped = (text) => String(text).replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** What was set, as attributes: [name, value], a tick as an empty value. */
const settings = (element) =>
  element.constructor.observedAttributes
    .filter((attribute) => !PAGE_ONLY.includes(attribute))
    .map((attribute) => [attribute, element[property(attribute)]])
    .filter(([, value]) => value !== undefined && value !== null && value !== '' && value !== false)
    .map(([attribute, value]) => [attribute, value === true ? '' : String(value)]);

const write = () => {
  const element = live.firstElementChild;
  const { how, folder } = Object.fromEntries(new FormData(form));
  const base = folder.endsWith('/') ? folder : `${folder}/`;
  const tag = element.localName;
  const set = settings(element);
  const { buy, summary } = element.result;
  const answer = buy
    ? `${tag === 'quilt-top' ? '' : `Buy ${buy.text}. `}${summary}`
    : 'The answer stands here once its script has run.';
  if (how === 'frame') {
    const address = new URLSearchParams([
      ['calculator', tag.slice(6)],
      ...set.map(([name, value]) => [name, value]),
    ]);
    snippet.value = `<iframe src="${escaped(`${base}frame.html?${address}`)}" title="${escaped(answer)}" style="width: 100%; height: 60rem; border: 0"></iframe>`;
    return;
  }
  const attributes = set
    .map(([name, value]) => (value === '' ? ` ${name}` : ` ${name}="${escaped(value)}"`))
    .join('');
  const script =
    how === 'module'
      ? `<script type="module" src="${escaped(base)}quilt-reckoner.js"></script>`
      : `<script src="${escaped(base)}quilt-reckoner.classic.js" defer></script>`;
  snippet.value = `${script}\n<${tag}${attributes}>\n  <p>${escaped(answer)}</p>\n</${tag}>`;
};

const choose = () => {
  const name = new FormData(form).get('calculator');
  const element = document.createElement(`quilt-${name}`);
  for (const [attribute, value] of Object.entries(STARTS[name])) element.setAttribute(attribute, value);
  live.replaceChildren(element);
  write();
};

form.addEventListener('input', ({ target }) => (target.name === 'calculator' ? choose() : write()));
form.addEventListener('submit', (event) => event.preventDefault());
live.addEventListener('input', write);
document.querySelector('#copy').addEventListener('click', async () => {
  const said = document.querySelector('#said');
  try {
    await navigator.clipboard.writeText(snippet.value);
    said.textContent = 'Copied.';
  } catch {
    snippet.select();
    said.textContent = 'Select it and copy: this browser does not let the page do it.';
  }
});
choose();
