// The attributes of every element, read from the manifest that editors read, each with a control that sets it on the live element.
import { allDefined, answerOf, isWhole, made, onOneLine, showSnippet, sourceOf, withCode } from './live.js';

const { modules } = await (await fetch('../dist/custom-elements.json')).json();
await allDefined();
const elements = modules.flatMap(({ declarations }) => declarations).filter(({ tagName }) => tagName);

const propertyOf = (attribute) => attribute.replace(/-(.)/g, (_, letter) => letter.toUpperCase());
const titleOf = (tag) => tag.replace('quilt-', '');
const idOf = (tag, attribute) => `${tag}.${attribute}`;
const takersOf = (attribute) =>
  elements.filter(({ attributes }) => attributes.some(({ name }) => name === attribute));

// What the manifest says of an attribute

/** `'open' | 'folded' | undefined` → the two words. */
const choicesOf = ({ type }) => [...type.text.matchAll(/'([^']+)'/g)].map(([, choice]) => choice);
const isFlag = ({ type }) => type.text.includes('boolean');

/** What a calculator says that it starts with, in inches and in centimetres, if nobody tells it. */
const askedDefault = (tag, attribute) => {
  const [inches, metric] = ['in', 'cm'].map((units) => {
    const blank = Object.assign(document.createElement(tag), { units });
    return blank.result?.working?.find(({ id }) => id === propertyOf(attribute))?.value;
  });
  return inches === metric ? inches : `\`${inches}\`, or \`${metric}\` in metric`;
};

const NOTHING = 'nothing, until you give one';

/** The description without what it says of the default, and that. */
const wordsOf = (tag, attribute) => {
  const [what, told] = attribute.description.split(/\s*\b(?:Default:? |The default is )/);
  const isTold = told && !/^(none|the calculator's)\b/.test(told);
  const start = isTold ? told.replace(/\.$/, '') : askedDefault(tag, attribute.name);
  if (isFlag(attribute)) return { what, start: (start || 'off').replace(/^(false|no)\b/, 'off') };
  return { what, start: start || NOTHING };
};

// The control of an attribute

/** The control, and how to read it: what the attribute becomes, or null for none. */
const controlOf = (attribute, now) => {
  if (isFlag(attribute)) {
    const box = made('input', { type: 'checkbox', checked: now !== null });
    return { control: box, read: () => (box.checked ? '' : null) };
  }
  const choices = choicesOf(attribute);
  const control = choices.length
    ? made(
        'select',
        {},
        made('option', { value: '' }, 'not set'),
        ...choices.map((choice) => made('option', { value: choice }, choice)),
      )
    : attribute.name === 'list'
      ? made('textarea', { rows: 3, spellcheck: false })
      : made('input', { type: 'text', autocomplete: 'off', spellcheck: false });
  control.value = now ?? '';
  return { control, read: () => control.value || null };
};

/** A row: the name, the control, what it does, what it starts as. */
const rowOf = (id, name, control, what, start) => {
  control.id = id;
  control.setAttribute('aria-describedby', `${id}.what`);
  return made(
    'div',
    { className: 'attribute' },
    made('label', { htmlFor: id }, made('code', {}, name)),
    control,
    made('p', { id: `${id}.what` }, ...withCode(what)),
    ...(start === undefined
      ? []
      : [made('p', { className: 'starts' }, 'Starts as: ', ...withCode(start), '.')]),
  );
};

const show = (section) => {
  const { attributes } = elements.find(({ tagName }) => tagName === section.id);
  const live = section.querySelector('.live');
  const root = live.firstElementChild;
  const subject = live.querySelector(section.id);
  const now = made('output', { className: 'now' });
  const snippet = made('div');
  const showText = showSnippet(snippet, section.querySelector('h2').textContent);

  const follow = () => {
    const words = root.querySelector(':scope > p');
    // What a page shows without the script must be the answer too.
    if (words && !root.result.errors) words.textContent = answerOf(root);
    now.textContent = onOneLine(answerOf(root));
    showText(sourceOf(live));
  };
  /** The others draw in the same turn; a plan made in the background tells when it is ready. */
  const settle = async () => {
    await root.updateComplete;
    follow();
  };

  const rowFor = (attribute) => {
    const { control, read } = controlOf(attribute, subject.getAttribute(attribute.name));
    control.addEventListener('input', () => {
      const value = read();
      if (value === null) subject.removeAttribute(attribute.name);
      else subject.setAttribute(attribute.name, value);
      void settle();
    });
    const { what, start } = wordsOf(section.id, attribute);
    return rowOf(idOf(section.id, attribute.name), attribute.name, control, what, start);
  };
  /** What few elements take, or what this example uses, comes first. The rest is folded. */
  const isOwn = ({ name }) => takersOf(name).length < 4 || subject.hasAttribute(name);
  const own = attributes
    .filter(isOwn)
    .sort((a, b) => Number(subject.hasAttribute(b.name)) - Number(subject.hasAttribute(a.name)));
  const shared = attributes.filter((attribute) => !isOwn(attribute));
  const more = shared.length
    ? [
        made(
          'details',
          {},
          made('summary', {}, `${shared.length} more that most elements take`),
          ...shared.map(rowFor),
        ),
      ]
    : [];
  const settings = made('div', { className: 'attributes' }, now, ...own.map(rowFor), ...more);
  const pair = made('div', { className: 'pair' });
  live.replaceWith(pair);
  pair.append(
    made('div', { className: 'shown' }, live),
    made('div', { className: 'beside' }, snippet, settings),
  );
  for (const type of ['input', 'change']) live.addEventListener(type, settle);
  return settle();
};

// Looks

const showLooks = () => {
  const model = document.querySelector('#model');
  const { cssProperties, cssParts } = elements.find(({ tagName }) => tagName === model.localName);
  const rules = new Map([['--quilt-accent', '#2f6f4f']]);
  const showText = showSnippet(document.querySelector('#css'), 'the style sheet');
  const follow = () => {
    for (const { name } of cssProperties) model.style.setProperty(name, rules.get(name) ?? '');
    const lines = [...rules].filter(([, value]) => value).map(([name, value]) => `  ${name}: ${value};\n`);
    showText(`${model.localName} {\n${lines.join('')}}`);
  };
  const rows = cssProperties.map(({ name, description, default: start }) => {
    const control = made('input', { type: 'text', value: rules.get(name) ?? '', spellcheck: false });
    control.addEventListener('input', () => {
      rules.set(name, control.value.trim());
      follow();
    });
    const [what, told] = description.split(/\s*\bDefault: /);
    return rowOf(`looks.${name}`, name, control, what, start ? `\`${start}\`` : told?.replace(/\.$/, ''));
  });
  document.querySelector('#properties').replaceChildren(...rows);
  document
    .querySelector('#parts tbody')
    .replaceChildren(
      ...cssParts.map(({ name, description }) =>
        made(
          'tr',
          {},
          made('th', { scope: 'row' }, made('code', {}, name)),
          made('td', {}, ...withCode(description)),
        ),
      ),
    );
  follow();
};

// A to Z

const showIndex = () => {
  const names = [...new Set(elements.flatMap(({ attributes }) => attributes.map(({ name }) => name)))].sort();
  const linkTo = (name, tag) => {
    const link = made('a', { href: `#${tag}` }, titleOf(tag));
    link.addEventListener('click', (event) => {
      event.preventDefault();
      const control = document.getElementById(idOf(tag, name));
      const folded = control.closest('details');
      if (folded) folded.open = true;
      control.focus();
      control.closest('.attribute').scrollIntoView({ block: 'center' });
    });
    return link;
  };
  document
    .querySelector('#index tbody')
    .replaceChildren(
      ...names.map((name) =>
        made(
          'tr',
          {},
          made('th', { scope: 'row' }, made('code', {}, name)),
          made('td', {}, ...takersOf(name).flatMap(({ tagName }) => [linkTo(name, tagName), ' '])),
        ),
      ),
    );
};

await Promise.all([...document.querySelectorAll('.element')].map(show));
showLooks();
showIndex();
document.querySelector('#note').remove();
isWhole();
// The place that the address names has moved down meanwhile.
document.getElementById(location.hash.slice(1))?.scrollIntoView();
