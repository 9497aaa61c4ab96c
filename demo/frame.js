// A calculator in a frame: its settings come from the address, and it tells the page around it how tall it is.
const settings = new URLSearchParams(location.search);
const known = ['backing', 'binding', 'borders', 'batting', 'top', 'cutting'];
const name = known.includes(settings.get('calculator')) ? settings.get('calculator') : 'backing';
const tag = `quilt-${name}`;
await customElements.whenDefined(tag);

const element = document.createElement(tag);
for (const attribute of customElements.get(tag).observedAttributes)
  if (settings.has(attribute)) element.setAttribute(attribute, settings.get(attribute));
document.querySelector('main').append(element);

// Only the page that embeds it is told, and only its height: `host` in the address names that page's origin.
const host = settings.get('host');
if (host && parent !== window)
  new ResizeObserver(() => {
    const height = Math.ceil(document.documentElement.getBoundingClientRect().height);
    parent.postMessage({ type: 'quilt-reckoner-height', height }, host);
  }).observe(document.documentElement);
