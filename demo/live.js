// What the pages that explain share: the text of a live example, and a button that copies it.

const main = document.querySelector('main');
main.ariaBusy = 'true';
/** The page is as it stays until somebody changes something. */
export const isWhole = () => main.removeAttribute('aria-busy');

/** A number stays on one line with its fraction, its unit and a ×: "1 1/8 yd" on two lines could read as 1/8 yd. */
export const onOneLine = (text) =>
  text.replace(/(\d)\s+(?=\d|[×+−÷]|(?:yd|in|inches|cm|centimetres|m|fat)\b)|(×)\s+(?=\d)/g, '$1$2\u00a0');

/** The HTML of what runs in a box, as an author writes it: from the margin, and flags without a value. */
export const sourceOf = (box) => {
  const lines = box.innerHTML
    .replace(/<[a-z][^>]*>/g, (tag) => tag.replaceAll('=""', ''))
    // A row of a table is a line, and browsers add the body of a table themselves.
    .replace(/<\/?tbody>/g, '')
    .replace(/<tr>[^]*?<\/tr>/g, (row) => row.replace(/>\s+</g, '><'))
    .trim()
    .split('\n');
  const margins = lines.slice(1).flatMap((line) => (line.trim() ? [line.search(/\S/)] : []));
  const margin = margins.length ? Math.min(...margins) : 0;
  return lines.map((line, at) => (at ? line.slice(margin) : line).trimEnd()).join('\n');
};

const made = (tag, attributes = {}, ...children) => {
  const element = Object.assign(document.createElement(tag), attributes);
  element.append(...children);
  return element;
};

/** A text to copy: shows it in the box, with a button under it. Returns a function that shows another text. */
export const showSnippet = (box, what) => {
  const code = made('code');
  const said = made('span', { role: 'status' });
  const button = made('button', { type: 'button', ariaLabel: `Copy: ${what}` }, 'Copy');
  button.addEventListener('click', async () => {
    try {
      await navigator.clipboard.writeText(code.textContent);
      said.textContent = 'Copied.';
    } catch {
      getSelection().selectAllChildren(code);
      said.textContent = 'Your browser did not let us copy. The text is selected: press Ctrl+C or ⌘C.';
    }
  });
  box.classList.add('snippet');
  box.replaceChildren(made('pre', {}, code), made('p', { className: 'copying' }, button, said));
  return (text) => {
    code.textContent = text;
    said.textContent = '';
  };
};

/** Once every calculator of the page is there. */
export const allDefined = () =>
  Promise.all(
    [...new Set([...document.querySelectorAll(':not(:defined)')].map(({ localName }) => localName))].map(
      (name) => customElements.whenDefined(name),
    ),
  );

/** What a calculator says now, in a line: what is wrong, or its answer. */
export const answerOf = ({ result, shadowRoot }) => {
  const [buy, ...rest] = [...shadowRoot.querySelectorAll('[part~=answer] p')].slice(0, 2);
  const told = [`${buy?.textContent.trim()}.`, ...rest.map((at) => at.textContent)].join(' ');
  return result.errors?.[0]?.message ?? told.replace(/\s+/g, ' ').trim();
};

/** Code that is shorter than this stays on one line. */
const SHORT = 24;

/** Words with `code` in backticks, as nodes. */
export const withCode = (text) =>
  text.split(/`([^`]*)`/).flatMap((part, at) => {
    if (!part) return [];
    if (!(at % 2)) return onOneLine(part).replaceAll("'", '’');
    return made('code', part.length < SHORT ? { className: 'whole' } : {}, part);
  });

export { made };
