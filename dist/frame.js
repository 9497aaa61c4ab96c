// A calculator in a frame of another page. Its settings come from the address. It takes only attributes that the calculator has,
// always as text, and ignores everything else. It tells the page around it only its height, and listens to nobody.
const address = new URLSearchParams(location.search);
const LETTERS = ['A', 'B', 'C', 'D'];

/** Whether there is a calculator with this name. A fabric is not one. */
const isCalculator = (name) => 'result' in (customElements.get(`quilt-${name}`)?.prototype ?? {});

/** Makes a calculator or a fabric, with the attributes from the address that start with this prefix. */
const made = (name, prefix = '') => {
  const tag = `quilt-${name}`;
  const element = document.createElement(tag);
  for (const attribute of customElements.get(tag).observedAttributes) {
    const value = address.get(prefix + attribute);
    // A swatch may be the address of a picture, but this page loads no pictures.
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

/** The origin of the page around, which the address names: one site, never all sites. */
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
    // The browser delivers the message only if the page around has that origin.
    parent.postMessage({ type: 'quilt-reckoner-height', height }, host);
  }).observe(document.documentElement);
