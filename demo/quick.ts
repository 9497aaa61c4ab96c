import '../src/index.js';
import { announce, show } from './quick/answers.js';
import { draw as drawFabrics, readBack as readFabric } from './quick/fabrics.js';
import { quiltIn, save } from './quick/files.js';
import { fractionKeys } from './quick/keys.js';
import { find, write } from './quick/page.js';
import { borders, parts, place, top, worksheet } from './quick/parts.js';
import { draw as drawPicture } from './quick/picture.js';
import { cell, choose, form, offer, part, rewrite, setWay, startOf, units, way } from './quick/question.js';
import { finishedSize, give, isInside, share } from './quick/sizes.js';
import { begin, recall, state, writeUnits } from './quick/state.js';

const filed = find('.filed');

/** Gives everything its size again, and shows what it comes to. */
const settle = (): void => {
  for (const group of form.querySelectorAll<HTMLElement>('[data-way]'))
    group.hidden = !group.dataset['way']?.split(' ').includes(way());
  find('#top .about').hidden = way() === 'blocks';
  place(way());
  find('#borders .about').hidden = !isInside() || way() === 'bed';
  share();
  drawFabrics();
  tell();
};

let isTold = true;
/** Shows the answers once everything that changes now has changed. */
const tell = (): void => {
  if (!isTold) return;
  isTold = false;
  queueMicrotask(() => {
    isTold = true;
    const shared = share();
    drawFabrics();
    show(shared);
    drawPicture(finishedSize(shared));
  });
};

/** Puts the changes into the address, so that a link opens the same quilt. */
const keep = (): void => history.replaceState(null, '', `#${state()}`);

const open = (kept: URLSearchParams): void => {
  recall(kept);
  lastUnits = units();
  give();
  settle();
};

let lastUnits = units();
/** Writes what is there in the other units. */
const switchUnits = (): void => {
  const before = lastUnits;
  lastUnits = units();
  worksheet.units = lastUnits;
  writeUnits(before);
  rewrite(before);
  offer();
};

/** What is typed into a part, and has a cell in the question, is the same in both. */
const readBack = (target: EventTarget | null): void => {
  if (target === top)
    for (const name of ['block', 'across', 'down'] as const) cell(name).value = String(top[name] ?? '');
  if (target === worksheet) choose(cell('increment'), worksheet.increment || startOf(cell('increment')));
};

/** The way that the question was answered last. */
let lastWay = way();
/** Another way to answer starts with the borders that it usually has. */
const switchWay = (): void => {
  const wish = parts.find(({ element }) => element === borders)?.wish;
  if (wish && (way() === 'top' || lastWay === 'top')) wish.checked = way() === 'top';
  lastWay = way();
};

begin();
form.addEventListener('submit', (event) => event.preventDefault());
document.addEventListener('input', ({ target }) => {
  if (target === cell('units')) switchUnits();
  if (target instanceof HTMLInputElement && target.type === 'radio') switchWay();
  readBack(target);
  readFabric(target);
  if (target instanceof Node && form.contains(target)) give();
  settle();
  keep();
});
document.addEventListener('change', ({ target }) => {
  if (target === cell('width') || target === cell('length')) part();
  if (target instanceof Node && form.contains(target)) give();
  settle();
  keep();
  queueMicrotask(announce);
});
document.addEventListener('reckoned', tell);
/** Buttons in the parts that answer the question in another way. */
for (const [name, other, first] of [
  ['by-blocks', 'blocks', 'block'],
  ['round-top', 'top', 'width'],
] as const)
  find(`[name=${name}]`).addEventListener('click', () => {
    setWay(other);
    switchWay();
    settle();
    keep();
    cell(first).focus();
  });
// The address holds the quilt, so this link moves without changing it.
find('.summary a').addEventListener('click', (event) => {
  event.preventDefault();
  find('#list').scrollIntoView();
  find('#list').focus({ preventScroll: true });
});
find('[name=save]').addEventListener('click', () => save(state()));

/** Opens the quilt of a file that somebody chose. */
const openFile = async (chooser: HTMLInputElement): Promise<void> => {
  const [file] = chooser.files ?? [];
  if (!file) return;
  const kept = await quiltIn(file);
  // The same file may be chosen again.
  chooser.value = '';
  write(
    filed,
    kept
      ? `This is the quilt of ${file.name}.`
      : `${file.name} is not a quilt that this page saved. Your quilt is as it was.`,
  );
  if (!kept) return;
  open(kept);
  keep();
};
const chooser = find<HTMLInputElement>('[name=open]');
chooser.addEventListener('change', () => void openFile(chooser));
addEventListener('hashchange', () => {
  if (/=|^$/.test(location.hash.slice(1))) open(new URLSearchParams(location.hash.slice(1)));
});
fractionKeys();
open(new URLSearchParams(location.hash.slice(1)));
