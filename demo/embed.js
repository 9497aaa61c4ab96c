// The embed maker: what is set in the live calculator becomes attributes, and its answer the words inside the tags.
import { attributeOf, partsOf, snippetOf, troubleWith, withoutScript } from './snippet.js';

const at = (selector) => document.querySelector(selector);
const [form, live, snippet, note, said] = ['#maker', '#live', '#snippet', '#note', '#said'].map(at);

const CUT_LIST = `<table><tbody>
  <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
  <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
  <tr><td>B</td><td>half-square triangles</td><td>3 in finished</td><td>24</td></tr>
</tbody></table>`;
const SIZE = { width: '58', length: '70' };
const TOP = { block: '12', across: '4', down: '5', sashing: '2' };
/** What each calculator starts with, and what stands inside its tags. */
const STARTS = {
  backing: [SIZE],
  binding: [SIZE],
  borders: [{ ...SIZE, borders: '2, 4 1/2' }],
  batting: [SIZE],
  top: [TOP],
  cutting: [{ sheet: 'fat-quarter' }, CUT_LIST],
  worksheet: [{}],
};
/** A worksheet's parts: what they start with, the letters of their fabrics, and what stands inside. A cut list names its own. */
const PARTS = {
  cutting: ['Cutting plan', { sheet: 'fat-quarter' }, undefined, CUT_LIST],
  top: ['Quilt top', TOP, 'A'],
  borders: ['Borders', { borders: '2, 5' }, 'B'],
  binding: ['Binding', {}, 'B'],
  backing: ['Backing', {}, 'C'],
  batting: ['Batting', {}],
};
const FABRICS = { A: 'sashing', B: 'borders', C: 'back', D: '' };

/** What readers may not change: attribute names, by element. */
const locks = new Map();
let asReader = false;

const made = (name, attributes, inside = '') => {
  const element = document.createElement(`quilt-${name}`);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
  // Words of this page alone: nothing that was typed.
  element.innerHTML = inside;
  return element;
};

const calculator = () => live.firstElementChild;
const all = () => [calculator(), ...partsOf(calculator())];
const chosen = () => Object.fromEntries(new FormData(form));

const labelled = (words, input, className = 'choice') => {
  const label = document.createElement('label');
  label.className = className;
  label.append(input, ` ${words}`);
  return label;
};
const input = (attributes) =>
  Object.assign(document.createElement('input'), { autocomplete: 'off', ...attributes });

// The snippet

const write = () => {
  const settings = chosen();
  at('#host-field').hidden = settings.how !== 'frame';
  const unfinished = all().flatMap(({ result, calculator: { title } }) =>
    (result.errors ?? []).map(({ message }) => `${title}: ${message}`),
  );
  const [trouble] = [...unfinished, troubleWith(settings)].filter(Boolean);
  note.textContent = trouble ? `The snippet waits. ${trouble}` : '';
  said.textContent = '';
  at('#copy').disabled = !!trouble;
  snippet.value = trouble ? '' : snippetOf(calculator(), { ...settings, folder: folderOf(settings), locks });
  snippet.rows = Math.min(24, snippet.value.split('\n').length + 1);
  if (!unfinished.length) at('#without').replaceChildren(...withoutScript(calculator()));
};

const folderOf = ({ folder }) => (folder.endsWith('/') ? folder : `${folder}/`);

// What readers may not change

const lockBox = (element, key, { label }) => {
  const attribute = attributeOf(key);
  const box = input({
    type: 'checkbox',
    value: attribute,
    checked: !!locks.get(element)?.includes(attribute),
  });
  box.addEventListener('change', () => {
    const others = (locks.get(element) ?? []).filter((name) => name !== attribute);
    locks.set(element, box.checked ? [...others, attribute] : others);
    showLocks();
    write();
  });
  return labelled(label, box);
};

/** A group of boxes for each sheet; folded where there are several. */
const listLocks = () => {
  const groups = all().map((element) => {
    const boxes = Object.entries(element.calculator.fields).map(([key, field]) =>
      lockBox(element, key, field),
    );
    if (element === calculator() && !partsOf(element).length) return boxes;
    const group = document.createElement('details');
    const summary = document.createElement('summary');
    summary.textContent = element.calculator.title;
    group.append(summary, ...boxes);
    return [group];
  });
  at('#locks').replaceChildren(...groups.flat());
};

const showLocks = () => {
  at('#as-reader').setAttribute('aria-pressed', String(asReader));
  for (const element of all()) element.lock = asReader ? locks.get(element)?.join(' ') : undefined;
};

// A worksheet's parts and fabrics

const kept = Object.fromEntries(
  Object.entries(PARTS).map(([name, [, attributes, , inside]]) => [name, made(name, attributes, inside)]),
);
const fabrics = Object.fromEntries(
  Object.keys(FABRICS).map((letter) => [letter, made('fabric', { letter })]),
);

const listParts = () => {
  at('#parts').replaceChildren(
    ...Object.entries(PARTS).map(([name, [title, , letters]]) => {
      const line = document.createElement('div');
      line.className = 'line';
      const letter = input({
        name: `letters.${name}`,
        value: letters ?? '',
        size: 4,
        ariaLabel: `${title}: fabric letter`,
      });
      line.append(
        labelled(title, input({ type: 'checkbox', name: `part.${name}`, checked: name !== 'cutting' })),
      );
      if (letters) line.append(letter);
      return line;
    }),
  );
  at('#fabrics').replaceChildren(
    ...Object.entries(FABRICS).map(([letter, name]) => {
      const line = document.createElement('div');
      line.className = 'line';
      line.append(
        labelled(
          '',
          input({ name: `fabric.${letter}`, value: name, ariaLabel: `Fabric ${letter}, name` }),
          'letter',
        ),
        input({
          name: `price.${letter}`,
          size: 6,
          inputMode: 'decimal',
          ariaLabel: `Fabric ${letter}, price`,
        }),
      );
      line.firstElementChild.prepend(letter);
      return line;
    }),
  );
};

const fillWorksheet = () => {
  if (calculator().localName !== 'quilt-worksheet') return;
  const given = chosen();
  const parts = Object.keys(PARTS).filter((name) => given[`part.${name}`]);
  for (const name of parts) kept[name].fabric = given[`letters.${name}`]?.trim() || undefined;
  const named = Object.entries(fabrics).filter(
    ([letter]) => given[`fabric.${letter}`] || given[`price.${letter}`],
  );
  for (const [letter, fabric] of named)
    Object.assign(fabric, { name: given[`fabric.${letter}`], price: given[`price.${letter}`] || undefined });
  calculator().currency = given.currency || undefined;
  const wanted = [...named.map(([, fabric]) => fabric), ...parts.map((name) => kept[name])];
  if (
    wanted.some((element, at) => calculator().children[at] !== element) ||
    calculator().children.length !== wanted.length
  ) {
    calculator().replaceChildren(...wanted);
    listLocks();
    showLocks();
  }
};

// What is chosen and typed

/** Writes its unit to every bare number first, so that the quilt stays the same. */
const changeUnits = () => {
  const { units } = chosen();
  for (const element of all()) {
    for (const { id, value, inches, role } of element.result.working)
      if (role === 'given' && typeof element[id] === 'string' && element[id])
        element[id] = value.startsWith('≈') && inches ? `${inches} in` : value;
    if (element === calculator()) element.units = units === 'cm' ? units : undefined;
  }
};

const choose = () => {
  const name = chosen().calculator;
  const element = made(name, ...STARTS[name]);
  element.units = chosen().units === 'cm' ? 'cm' : undefined;
  at('#whole').hidden = name !== 'worksheet';
  live.replaceChildren(element);
  fillWorksheet();
  listLocks();
  showLocks();
  write();
};

/** What is typed over a reckoned row is one reader's measure of her own quilt; a snippet has no place for it. */
const dropMeasured = () => {
  for (const element of all())
    if (Object.keys(element.measured ?? {}).length) {
      element.measured = undefined;
      write();
      note.textContent =
        'A reckoned row is for your readers to type over, when they have measured their own quilt: it was put back.';
    }
};

form.addEventListener('submit', (event) => event.preventDefault());
form.addEventListener('input', ({ target }) => {
  if (target.name === 'calculator') return choose();
  if (target.name === 'units') changeUnits();
  fillWorksheet();
  // The worksheet hears of its new parts when they have drawn themselves, and tells with `reckoned`.
  if (!live.contains(target)) write();
});
// A row that is being typed over is not the pattern's.
live.addEventListener('input', () => {
  if (!all().some(({ measured = {} }) => Object.keys(measured).length)) write();
});
live.addEventListener('reckoned', () => {
  if (!all().some(({ measured = {} }) => Object.keys(measured).length)) rewrite();
});
live.addEventListener('change', dropMeasured);

let isWaiting = false;
/** Once for all that reckon in one go; says nothing that was said a moment ago. */
const rewrite = () => {
  if (isWaiting) return;
  isWaiting = true;
  queueMicrotask(() => {
    isWaiting = false;
    const { value } = snippet;
    const before = note.textContent;
    write();
    if (snippet.value === value && before && !note.textContent) note.textContent = before;
  });
};

at('#as-reader').addEventListener('click', () => {
  asReader = !asReader;
  showLocks();
});
at('#copy').addEventListener('click', async () => {
  try {
    await navigator.clipboard.writeText(snippet.value);
    said.textContent = 'Copied. Paste it into your post’s HTML.';
  } catch {
    snippet.select();
    said.textContent = 'This browser does not let the page copy: the snippet is selected, copy it yourself.';
  }
});

form.elements.folder.value = new URL('../dist/', location.href);
listParts();
choose();
