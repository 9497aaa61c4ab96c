// A calculator in a frame of another page. Its settings come from the address: only attributes that the calculator has are
// taken, always as text, and everything else is left alone. It tells the page around it how tall it is, and nothing else; it
// listens to nobody.
const address = new URLSearchParams(location.search);
const LETTERS = ['A', 'B', 'C', 'D'];

/** Whether the script has a calculator of this name; a fabric reckons nothing. */
const isCalculator = (name) => 'result' in (customElements.get(`quilt-${name}`)?.prototype ?? {});

/** A calculator or a fabric with the attributes that the address has for it, each after this prefix. */
const made = (name, prefix = '') => {
  const tag = `quilt-${name}`;
  const element = document.createElement(tag);
  for (const attribute of customElements.get(tag).observedAttributes) {
    const value = address.get(prefix + attribute);
    // A swatch may be the address of a picture; this page loads none.
    if (value !== null && (attribute !== 'swatch' || CSS.supports('color', value)))
      element.setAttribute(attribute, value);
  }
  return element;
};

const named = address.get('calculator');
// The script defines this one last.
await customElements.whenDefined('quilt-worksheet');
const name = isCalculator(named) ? named : 'backing';
const lang = address.get('lang') ?? '';
if (/^[a-z]{2,3}(-[a-z\d]{2,8})*$/i.test(lang)) document.documentElement.lang = lang;

const calculator = made(name);
if (name === 'worksheet') {
  for (const letter of LETTERS) {
    const prefix = `fabric-${letter}.`;
    if (![...address.keys()].some((key) => key.startsWith(prefix))) continue;
    const fabric = made('fabric', prefix);
    fabric.setAttribute('letter', letter);
    calculator.append(fabric);
  }
  const parts = [...new Set(address.keys())].filter((key) => key !== 'worksheet' && isCalculator(key));
  calculator.append(...parts.map((part) => made(part, `${part}.`)));
}
document.querySelector('main').append(calculator);

/** The origin of the page around, as the address names it: one site, never all of them. */
const hostNamed = () => {
  try {
    const { protocol, origin } = new URL(address.get('host'));
    return /^https?:$/.test(protocol) ? origin : '';
  } catch {
    return '';
  }
};
const host = hostNamed();
if (host && parent !== window)
  new ResizeObserver(() => {
    const height = Math.ceil(document.documentElement.getBoundingClientRect().height);
    // The browser hands it over only if the page around is of that origin.
    parent.postMessage({ type: 'quilt-reckoner-height', height }, host);
  }).observe(document.documentElement);
