// The embed maker. The settings of the live calculator become attributes, and its answer becomes the words inside the tags.
import { attributeOf, partsOf, snippetOf, troubleWith, warningOf, withoutScript } from './snippet.js';

const at = (selector) => document.querySelector(selector);
const [form, live, snippet, note, said] = ['#maker', '#live', '#snippet', '#note', '#said'].map(at);

const CUT_LIST = `<table><tbody>
  <tr><th>Fabric</th><th>Piece</th><th>Cut size</th><th>How many</th></tr>
  <tr><td>A</td><td>square</td><td>3 1/2 in</td><td>48</td></tr>
  <tr><td>B</td><td>half-square triangles</td><td>3 in finished</td><td>24</td></tr>
</tbody></table>`;
const CHART = `<table><tbody>
  <tr><td>A/B</td><td>A</td><td>A\\B</td></tr>
  <tr><td>A</td><td>B</td><td>A</td></tr>
  <tr><td>A\\B</td><td>A</td><td>A/B</td></tr>
</tbody></table>`;
const SIZE = { width: '58', length: '70' };
/**
 * The calculators, in the order of a worksheet's parts: the first values alone, the first values as a part if they differ, the
 * letters of its fabrics there (a cut list and a chart name their own), and the content of its tags.
 */
const STARTS = {
  cutting: { alone: { sheet: 'fat-quarter' }, inside: CUT_LIST },
  block: { alone: { block: '12', count: '20' }, part: { count: '20' }, inside: CHART },
  top: { alone: { block: '12', across: '4', down: '5', sashing: '2' }, letters: 'A' },
  borders: { alone: { ...SIZE, borders: '2, 4 1/2' }, part: { borders: '2, 5' }, letters: 'B' },
  binding: { alone: SIZE, part: {}, letters: 'B' },
  backing: { alone: SIZE, part: {}, letters: 'C' },
  batting: { alone: SIZE, part: {} },
  sleeve: { alone: { width: '58' }, part: {}, letters: 'C' },
};
const PARTS = Object.keys(STARTS);
const FABRICS = { A: 'sashing', B: 'borders', C: 'back', D: '' };

/** What readers may not change: attribute names, by element. */
const locks = new Map();
let asReader = false;

const made = (name, attributes, inside = '') => {
  const element = document.createElement(`quilt-${name}`);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
  // Only words of this page, nothing that somebody typed.
  element.innerHTML = inside;
  return element;
};

const calculator = () => live.firstElementChild;
const all = () => [calculator(), ...partsOf(calculator())];
const chosen = () => Object.fromEntries([...new FormData(form)].map(([key, value]) => [key, value.trim()]));

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
  const unfinished = all().flatMap(({ result, teller }) =>
    (result.errors ?? []).map(({ message }) => `${teller.words.title}: ${message}`),
  );
  const [trouble] = [...unfinished, ...wrongFabrics(), troubleWith(settings)].filter(Boolean);
  at('#folder-warning').textContent = warningOf(settings);
  note.textContent = trouble ? `The snippet is not ready yet. ${trouble}` : '';
  said.textContent = '';
  at('#copy').disabled = !!trouble;
  snippet.value = trouble ? '' : snippetOf(calculator(), { ...settings, folder: folderOf(settings), locks });
  snippet.rows = 3;
  while (snippet.scrollHeight > snippet.clientHeight && snippet.rows < 24) snippet.rows += 1;
  if (!unfinished.length) at('#without').replaceChildren(...withoutScript(calculator()));
};

const folderOf = ({ folder }) => (folder.endsWith('/') ? folder : `${folder}/`);

// What readers may not change

const lockBox = (element, key) => {
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
  return labelled(element.teller.label(key), box);
};

/** A group of boxes for each calculator, folded if there are several. */
const listLocks = () => {
  const groups = all().map((element) => {
    const boxes = Object.keys(element.calculator.fields).map((key) => lockBox(element, key));
    if (element === calculator() && !partsOf(element).length) return boxes;
    const group = document.createElement('details');
    const summary = document.createElement('summary');
    summary.textContent = element.teller.words.title;
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
  Object.entries(STARTS).map(([name, { alone, part = alone, inside }]) => [name, made(name, part, inside)]),
);
const fabrics = Object.fromEntries(
  Object.keys(FABRICS).map((letter) => [letter, made('fabric', { letter })]),
);

/** A line of inputs, with a note under them. */
const lineOf = (id) => Object.assign(document.createElement('div'), { className: 'line', id });
const noteOf = ({ id }) =>
  Object.assign(document.createElement('small'), { className: 'note', id: `${id}.note`, role: 'status' });

const listParts = () => {
  at('#parts').replaceChildren(
    ...Object.entries(STARTS).map(([name, { letters }]) => {
      const { title } = kept[name].teller.words;
      const line = lineOf(`part.${name}`);
      const letter = input({
        name: `letters.${name}`,
        value: letters ?? '',
        size: 4,
        ariaLabel: `${title}: fabric letter`,
      });
      line.append(
        labelled(
          title,
          input({ type: 'checkbox', name: `part.${name}`, checked: name !== 'cutting' && name !== 'block' }),
        ),
      );
      if (letters) line.append(letter);
      line.append(noteOf(line));
      return line;
    }),
  );
  at('#fabrics').replaceChildren(
    ...Object.entries(FABRICS).map(([letter, name]) => {
      const line = lineOf(`fabric.${letter}`);
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
          placeholder: '12.50',
          ariaLabel: `Fabric ${letter}, price`,
        }),
        input({
          name: `swatch.${letter}`,
          placeholder: '#3f6f86',
          ariaLabel: `Fabric ${letter}, colour or picture`,
        }),
        input({ name: `width.${letter}`, placeholder: '40 in', ariaLabel: `Fabric ${letter}, usable width` }),
        noteOf(line),
      );
      line.firstElementChild.prepend(letter);
      return line;
    }),
  );
};

const isWorksheet = () => calculator().localName === 'quilt-worksheet';

/** Fabrics that have at least one value. */
const declared = (given) =>
  Object.entries(fabrics).filter(([letter]) =>
    ['fabric', 'price', 'swatch', 'width'].some((of) => given[`${of}.${letter}`]),
  );

/** What the field itself says about a text that it cannot read. */
const refusalOf = (field, text, key) => {
  const { lengthStyle, teller } = kept.backing;
  try {
    if (text) field.read(text, lengthStyle, key);
    return '';
  } catch ({ problem }) {
    return teller.say(problem);
  }
};

/** Says beside each fabric and part what is wrong there. Returns why there is no snippet yet. */
const wrongFabrics = () => {
  if (!isWorksheet()) return [];
  const given = chosen();
  const say = (line, sentences) =>
    (document.getElementById(`${line}.note`).textContent = sentences.filter(Boolean).join(' '));
  const letters = declared(given).map(([letter]) => letter);
  for (const name of PARTS) {
    const unknown = (given[`letters.${name}`] ?? '')
      .split(/[\s,]+/)
      .filter((letter) => letter && !letters.includes(letter));
    say(
      `part.${name}`,
      given[`part.${name}`] && letters.length
        ? unknown.map(
            (letter) =>
              `No fabric has the letter ${letter}: ${letter in FABRICS ? 'give it a name below, or ' : ''}write ${letters[0]}.`,
          )
        : [],
    );
  }
  const { fabricWidth } = calculator().calculator.fields;
  const { price } = kept.backing.calculator.fields;
  return Object.keys(FABRICS).flatMap((letter) => {
    const swatch = given[`swatch.${letter}`];
    const sentences = [
      refusalOf(price, given[`price.${letter}`], 'price'),
      isSwatch(swatch) ? '' : `“${swatch}” is not a colour. Write it like #3f6f86 or slategray.`,
      refusalOf(fabricWidth, given[`width.${letter}`], 'fabricWidth'),
    ].filter(Boolean);
    say(`fabric.${letter}`, sentences);
    return sentences.map((sentence) => `Fabric ${letter}: ${sentence}`);
  });
};

const isSwatch = (text) => !text || CSS.supports('color', text) || /^(https?:|\.{0,2}\/)/.test(text);

const fillWorksheet = () => {
  if (!isWorksheet()) return;
  const given = chosen();
  const parts = PARTS.filter((name) => given[`part.${name}`]);
  for (const name of parts) kept[name].fabric = given[`letters.${name}`] || undefined;
  const named = declared(given);
  for (const [letter, fabric] of named) {
    const [name, price, swatch, fabricWidth] = ['fabric', 'price', 'swatch', 'width'].map(
      (of) => given[`${of}.${letter}`] || undefined,
    );
    Object.assign(fabric, { name, price, fabricWidth, swatch: isSwatch(swatch) ? swatch : undefined });
  }
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

/** First gives every number alone its unit, so that the quilt stays the same. */
const changeUnits = () => {
  const { units } = chosen();
  const { bare } = calculator().lengthStyle;
  for (const element of all())
    for (const [key, { marked }] of Object.entries(element.calculator.fields)) {
      const text = element[key];
      if (typeof text === 'string' && text) element[key] = marked?.(text, bare) ?? text;
    }
  for (const letter of Object.keys(FABRICS)) {
    const width = form.elements[`width.${letter}`];
    width.value = kept.backing.calculator.fields.fabricWidth.marked(width.value, bare);
  }
  calculator().units = units === 'cm' ? units : undefined;
};

const choose = () => {
  const name = chosen().calculator;
  const { alone = {}, inside } = STARTS[name] ?? {};
  const element = made(name, alone, inside);
  element.units = chosen().units === 'cm' ? 'cm' : undefined;
  at('#whole').hidden = name !== 'worksheet';
  live.replaceChildren(element);
  fillWorksheet();
  listLocks();
  showLocks();
  write();
};

/** A value typed over a reckoned row is one reader's measure of her own quilt, so it does not belong into a snippet. */
const dropMeasured = () => {
  for (const element of all())
    if (Object.keys(element.measured ?? {}).length) {
      element.measured = undefined;
      write();
      note.textContent =
        'Only your readers type over a reckoned row, after they measure their own quilt. We put the value back.';
    }
};

form.addEventListener('submit', (event) => event.preventDefault());
form.addEventListener('input', ({ target }) => {
  if (target.name === 'calculator') return choose();
  if (target.name === 'units') changeUnits();
  fillWorksheet();
  // The worksheet learns of its new parts when they have drawn themselves. Then it sends `reckoned`.
  if (!live.contains(target)) write();
});
// A value that somebody types over a row is not part of the pattern.
live.addEventListener('input', () => {
  if (!all().some(({ measured = {} }) => Object.keys(measured).length)) write();
});
live.addEventListener('reckoned', () => {
  if (!all().some(({ measured = {} }) => Object.keys(measured).length)) rewrite();
});
live.addEventListener('change', dropMeasured);

let isWaiting = false;
/** Runs once for all calculators that reckon together. Does not repeat what it just said. */
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
    said.textContent = `Copied. Paste it into your post’s HTML. ${warningOf(chosen())}`;
  } catch {
    snippet.select();
    said.textContent =
      'This browser does not let us copy. The snippet is selected, so you can copy it yourself.';
  }
});

listParts();
choose();
