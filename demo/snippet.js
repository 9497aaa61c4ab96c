// Writes the snippet of the embed maker: a calculator with its settings, as HTML for another page. It builds elements in a document
// that runs nothing, so that the browser itself escapes every word.

const inert = document.implementation.createHTMLDocument('');
const make = (tag, attributes = {}, ...children) => {
  const element = inert.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
};

/** An element as HTML. Elements without words of their own have a line for each child. */
const written = (element, indent = '') => {
  const children = [...element.children];
  if (
    !children.length ||
    element.textContent.trim() !==
      children
        .map((at) => at.textContent)
        .join('')
        .trim()
  )
    return indent + element.outerHTML.replace(/^<[^>]*>/, (tag) => tag.replaceAll('=""', ''));
  const end = `</${element.localName}>`;
  const start = element.cloneNode().outerHTML.slice(0, -end.length).replaceAll('=""', '');
  return [indent + start, ...children.map((child) => written(child, `${indent}  `)), indent + end].join('\n');
};

export const propertyOf = (attribute) => attribute.replace(/-(.)/g, (_, letter) => letter.toUpperCase());
export const attributeOf = (property) => property.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Attributes that the maker sets itself, or that are in the content of the tags. */
const APART = ['lock', 'name', 'list', 'chart'];

/** `quilt-backing` → `backing`. */
const nameOf = ({ localName }) => localName.slice('quilt-'.length);

/** The parts and fabrics of a worksheet. Empty for another calculator. */
export const partsOf = (element) => [...element.children].filter((child) => child.result);
const fabricsOf = (element) => [...element.children].filter((child) => child.localName === 'quilt-fabric');

/** The settings that differ from the defaults, as attributes. */
const settingsOf = (element) => {
  const rows = ({ result }) => new Map(result.working?.map(({ id, value }) => [id, value]));
  const blank = document.createElement(element.localName);
  blank.units = element.units;
  const [now, anyway] = element.result ? [rows(element), rows(blank)] : [];
  const isPart = element.parentElement?.localName === 'quilt-worksheet';
  return element.constructor.observedAttributes.flatMap((attribute) => {
    if (APART.includes(attribute) && element.result) return [];
    const key = propertyOf(attribute);
    const value = element[key];
    if (value === undefined || value === null || value === '' || value === false) return [];
    // In a worksheet even a default value is needed, if the worksheet gives another one.
    if (!isPart && anyway?.has(key) && now.get(key) === anyway.get(key)) return [];
    return [[attribute, value === true ? '' : String(value).trim()]];
  });
};

/** All attributes of an element: its settings and its locks. */
const attributesOf = (element, locks) => {
  const locked = locks.get(element) ?? [];
  return [...settingsOf(element), ...(locked.length ? [['lock', locked.join(' ')]] : [])];
};

/** The cut list of a cutting plan: a line for each piece, with | between the cells. */
const listTextOf = ({ result }) => result.working.find(({ id }) => id === 'list').value;

const listTable = (element) => {
  const lines = listTextOf(element)
    .split('\n')
    .map((line) => line.split(' | '));
  const hasHead = !lines[0].some((cell) => /^([x×] ?)?\d/i.test(cell));
  const head = hasHead ? lines.shift() : ['Fabric', 'Piece', 'Cut size', 'How many'];
  const row = (tag) => (cells) => make('tr', {}, ...cells.map((cell) => make(tag, {}, cell)));
  return make('table', {}, make('thead', {}, row('th')(head)), make('tbody', {}, ...lines.map(row('td'))));
};

/** The chart of a block as text: a line for each row, with | between the cells. */
const chartTextOf = ({ result }) => result.working.find(({ id }) => id === 'chart').value;

/** A cell of a chart: its letters, and as attributes how many cells it covers and where its goose flies. */
const chartCell = (written) => {
  const [, letters, across, down, goose] = /^(.*?)(?: (\d+)x(\d+))?(?: (up|down|left|right))?$/.exec(written);
  const spans = { colspan: across, rowspan: down, goose };
  const kept = Object.entries(spans).filter(([, value]) => value && value !== '1');
  return make('td', Object.fromEntries(kept), letters);
};

const chartTable = (element) => {
  const rows = chartTextOf(element)
    .split('\n')
    .map((line) => (line === '-' ? [] : line.replace(/^\| | \|$/g, '').split(' | ')));
  return make(
    'table',
    {},
    make('tbody', {}, ...rows.map((cells) => make('tr', {}, ...cells.map(chartCell)))),
  );
};

/** Calculators whose cloth may have several widths. */
const OWN_WIDTHS = ['quilt-cutting', 'quilt-block'];

/** `of cloth 40 in wide`, if all cloth has one width. */
const clothOf = ({ localName, result: { buy, working } }) => {
  const width = working.find(({ id }) => id === 'fabricWidth')?.value;
  return width && /^(yd|m)$/.test(buy.unit) && !OWN_WIDTHS.includes(localName)
    ? ` of cloth ${width} wide`
    : '';
};

/** The answer in words, as the calculator says it. */
const answerOf = (element) => {
  const { result, good, flow } = element;
  const { lead, large } = element.ownHeadline(good) ?? {
    // Cloth for several parts of a quilt is bought together.
    lead: flow?.values.shared ? `${element.teller.words.title} alone` : 'Buy',
    large: result.buy.text + clothOf(element),
  };
  return { large: `${lead} ${large}${result.cost ? `, ${result.cost.text}` : ''}.`, summary: result.summary };
};

/** What a page shows without a script: the answer, the cut list, and the notes. */
const fallbackOf = (element, title = '') => {
  const { large, summary } = answerOf(element);
  const answer = make('p', {}, title && `${title}: `, make('strong', {}, large), ` ${summary}`);
  const remarks = element.result.notes.map((note) => make('p', {}, note));
  if (element.localName === 'quilt-cutting') return [answer, listTable(element), ...remarks];
  const cuts = element.result.cuts.map(({ count, piece, text }) =>
    make('li', {}, `${count} × ${piece}, ${text}`),
  );
  const chart = element.localName === 'quilt-block' ? [chartTable(element)] : [];
  return [answer, ...chart, ...(cuts.length ? [make('ul', {}, ...cuts)] : []), ...remarks];
};

/** The lines of a fabric go inside the fabric's tags, which show nothing when the script runs. */
const shoppingLines = ({ result: { fabrics, items } }, { letter, name }) => {
  const label = `Fabric ${letter}${name ? `, ${name}` : ''}: `;
  const line = (amount, uses) =>
    make('p', {}, label, make('strong', {}, `Buy ${amount}.`), ` For ${uses.toLowerCase()}.`);
  return [
    ...fabrics
      .filter((fabric) => fabric.letter === letter)
      .map(({ buy, parts }) => line(buy.text, parts.map(({ title }) => title).join(', '))),
    ...items.filter(({ fabric }) => fabric === letter).map(({ text, title }) => line(text, title)),
  ];
};

const calculatorOf = (element, locks, title) => {
  const attributes = Object.fromEntries(attributesOf(element, locks));
  if (element.localName !== 'quilt-worksheet')
    return make(element.localName, attributes, ...fallbackOf(element, title));
  const fabrics = fabricsOf(element).map((fabric) =>
    make('quilt-fabric', Object.fromEntries(settingsOf(fabric)), ...shoppingLines(element, fabric)),
  );
  const parts = partsOf(element).map((part) => calculatorOf(part, locks, part.teller.words.title));
  return make(element.localName, attributes, ...fabrics, ...parts);
};

/** The same in words only, for the text beside a frame. */
const wordsOf = (element) =>
  element.localName === 'quilt-worksheet'
    ? [
        ...fabricsOf(element).flatMap((fabric) => shoppingLines(element, fabric)),
        ...partsOf(element).flatMap((part) => fallbackOf(part, part.teller.words.title)),
      ]
    : fallbackOf(element);

/** The address of the frame for this calculator. `top.block=12` is for a part, `fabric-A.price=9` for a fabric. */
const frameAddress = (element, { folder, host, locks }) => {
  const entriesOf = (calculator, prefix = '') =>
    [
      ...attributesOf(calculator, locks),
      ...(calculator.localName === 'quilt-cutting' ? [['list', listTextOf(calculator)]] : []),
      ...(calculator.localName === 'quilt-block' ? [['chart', chartTextOf(calculator)]] : []),
    ].map(([name, value]) => [prefix + name, value]);
  const address = new URL('frame.html', folder);
  address.search = new URLSearchParams([
    ['calculator', nameOf(element)],
    ...entriesOf(element),
    // A part is named even if it has no settings.
    ...partsOf(element).flatMap((part) => [[nameOf(part), ''], ...entriesOf(part, `${nameOf(part)}.`)]),
    ...fabricsOf(element).flatMap((fabric) =>
      settingsOf(fabric).map(([name, value]) => [`fabric-${fabric.letter}.${name}`, value]),
    ),
    ['host', host],
  ]).toString();
  return address;
};

/** This script comes before the frame, so that it gets the first height too. */
const listener = ({ origin, pathname }) => `
  // Gives the calculator's frame its height. It listens to that frame alone.
  addEventListener('message', ({ source, origin, data }) => {
    if (origin !== ${JSON.stringify(origin)} || data?.type !== 'quilt-reckoner-height') return;
    if (!Number.isInteger(data.height) || data.height < 50 || data.height > 40000) return;
    for (const frame of document.querySelectorAll(${JSON.stringify(`iframe[src^="${origin}${pathname}?"]`)}))
      if (frame.contentWindow === source) frame.height = data.height;
  });
`;

/** A sentence about what does not work, or empty. */
export const troubleWith = ({ how, folder, host }) => {
  const isWeb = (address, base) => {
    try {
      return /^https?:$/.test(new URL(address, base).protocol);
    } catch {
      return false;
    }
  };
  if (!folder)
    return how === 'frame'
      ? 'Where did you put the files? Write it like https://example.org/quilt-reckoner/.'
      : 'Where did you put the files? Write ./ if they are beside the page, or https://example.org/quilt-reckoner/.';
  if (/\s/.test(folder))
    return 'An address has no spaces. Write it like https://example.org/quilt-reckoner/.';
  if (!isWeb(folder, how === 'frame' ? undefined : 'https://example.org'))
    return how === 'frame'
      ? 'A frame needs the whole address of the folder. Write it like https://example.org/quilt-reckoner/.'
      : 'That is not the address of a folder. Write it like https://example.org/quilt-reckoner/ or ./quilt-reckoner/.';
  if (how === 'frame' && !isWeb(host))
    return 'Which page will it be on? Write its address, like https://example.org/.';
  return '';
};

/** A warning that nobody will see the calculator, because the files are on this computer or nowhere. */
export const warningOf = ({ folder }) => {
  if (/^(https?:)?\/\/(localhost|127\.|0\.0\.0\.0|\[::1\])/i.test(folder))
    return 'Only this computer has that address, so nobody else will see the calculator. Put the files on your site and write its address, like https://example.org/quilt-reckoner/.';
  return /\/\/example\.org\b/i.test(folder)
    ? 'We invented this address. Put the files on your own site, and write its address in place of example.org.'
    : '';
};

/**
 * The snippet. `how` is `loader`, `classic` or `frame`. `folder` is the place of the files. `host` is the origin of the page around
 * a frame. `locks` are the locked attributes of each element. The calculator must have no errors.
 */
export const snippetOf = (element, { how, folder, host, locks }) => {
  if (how !== 'frame') {
    const script =
      how === 'loader'
        ? make('script', { type: 'module', src: `${folder}quilt-loader.js` })
        : make('script', { src: `${folder}quilt-reckoner.classic.js`, defer: '' });
    return `${written(script)}\n${written(calculatorOf(element, locks))}\n`;
  }
  const address = frameAddress(element, { folder, host: new URL(host).origin, locks });
  const frame = make('iframe', {
    src: address,
    title: `${element.teller.words.title} calculator`,
    width: '100%',
    height: '700',
    style: 'border: 0',
    allow: 'clipboard-write',
  });
  return [make('script', {}, listener(address)), frame, make('noscript', {}, ...wordsOf(element))]
    .map((part) => `${written(part)}\n`)
    .join('');
};

/** The content for a page without scripts, as nodes for this page. */
export const withoutScript = (element) => wordsOf(element).map((node) => document.importNode(node, true));
