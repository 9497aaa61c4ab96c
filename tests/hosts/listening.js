// Writes down what goes wrong on a page, and what its window has before anything else is in it. A classic script: it runs before anything of the page's own.
window.faults = [];
window.names = new Set(Object.getOwnPropertyNames(window)).add('names');
const missing = ({ src, href, localName }) => `${localName} ${src || href} did not load`;
addEventListener(
  'error',
  ({ message, target }) => window.faults.push(target === window ? message : missing(target)),
  true,
);
addEventListener('unhandledrejection', ({ reason }) => window.faults.push(String(reason)));
addEventListener('securitypolicyviolation', ({ violatedDirective, sample, sourceFile }) =>
  window.faults.push([violatedDirective, sample, sourceFile].join(' ')),
);
for (const level of ['error', 'warn']) console[level] = (...words) => window.faults.push(words.join(' '));
