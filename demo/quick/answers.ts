import { isPlanning } from '../../src/ledger/planning.js';
import type { Size } from '../../src/ledger/quilt.js';
import { unbroken } from '../../src/measure/format.js';
import type { Message } from '../../src/measure/message.js';
import type { FlowSayings } from '../../src/workbook/flow-sayings.js';
import { listLines, type ListLine } from '../../src/workbook/shopping.js';
import { find, write } from './page.js';
import { batting, borders, parts, present, top, worksheet, type Part, type PartName } from './parts.js';
import { cells, way, type Problem } from './question.js';
import { finishedSize, isInside, type Shared } from './sizes.js';

/** More things than this are only counted, so that the summary stays short. */
const MOST_NAMED = 4;

const summary = find('.summary');
const lines = find('.lines', summary);
const heard = find('[role=status]');
const flow = find('.flow');

const isSame = (a: Size, b: Size): boolean => a.width.equals(b.width) && a.length.equals(b.length);
const shown = (size: Size): string => worksheet.teller.size(size);

/** One package of batting, in short: `twin 72 × 90 in`. Undefined where it is something else. */
const packageIn = ({ buy }: ListLine): string | undefined => {
  const { answer, teller } = batting;
  const pack = answer?.used.pack;
  if (!pack || buy?.unit !== 'package' || !buy.amount.equals(1)) return undefined;
  return `${typeof pack.name === 'string' ? pack.name : teller.say(pack.name)} ${teller.size(pack)}`;
};

/** What to buy, a text for each line of the list. */
const buys = (): string[] => {
  const { answer, teller } = worksheet;
  /** `Border 1` needs a colon before its amount. */
  const named = (uses: Message): string =>
    teller
      .say(uses)
      .replace(/^./u, (first) => first.toUpperCase())
      .replace(/\d$/, '$&:');
  return (answer ? listLines(answer) : []).map(
    (line) => `${named(line.uses)} ${packageIn(line) ?? teller.say(line.text)}`,
  );
};

/** Whether something in a part itself is wrong. That it has no size is said once, by what the size comes from. */
const isWrong = ({ name, element }: Part): boolean => {
  const [issue] = element.outcome.reckoning.issues.filter(
    ({ input, code }) => !(code === 'missing' && SIDES.includes(input)),
  );
  return !!issue && !isPlanning(issue) && !(name === 'top' && BLOCKS.includes(issue.input));
};
const SIDES = ['width', 'length'];
const BLOCKS = ['block', 'across', 'down'];

const titleOf = ({ section }: Part): string => find('h2', section).textContent;

/** What is missing, in sentences. The question itself says what is wrong with a cell. */
const missing = ({ problems }: Shared): string[] => {
  if (problems.some(({ isBegun }) => isBegun)) return ['Still typing…'];
  const cells = problems.flatMap(({ name }) => NAMES[name] ?? []);
  if (cells.length) return [`No answer until the ${cells.join(' and the ')} can be read.`];
  const inParts = present()
    .filter(isWrong)
    .map((part) => `Look into “${titleOf(part)}”: something there is missing or wrong.`);
  const planned = present()
    .filter(({ element }) => element.outcome.reckoning.issues.some(isPlanning))
    .map((part) => `“${titleOf(part)}” is still being planned.`);
  const others = problems.map(({ message }) => message);
  return [
    ...others,
    ...inParts,
    ...planned,
    ...(isSizeless() ? ['The rest waits for the size with borders.'] : []),
  ];
};

/** The cells of the question, inside a sentence. */
const NAMES: Record<string, string> = {
  width: 'width',
  length: 'length',
  bed: 'bed',
  drop: 'drop',
  tuck: 'pillow tuck',
  block: 'block size',
  across: 'number of blocks across',
  down: 'number of blocks down',
  'fabric-width': 'cloth width',
  increment: 'step of the shop',
};

/** Whether the borders are wrong, so that what comes after them has no size. */
const isSizeless = (): boolean => {
  const [issue] = borders.outcome.reckoning.issues;
  return borders.isConnected && !!issue && !isPlanning(issue);
};

/** What the list says too: that it has no cloth for the blocks, or for fewer of them. */
const BLOCKLESS: string[] = [
  'noClothForBlocks',
  'listForOtherBlocks',
  'blocksForOtherPlaces',
] satisfies (keyof FlowSayings)[];
const lacksBlocks = (): boolean =>
  worksheet.outcome.reckoning.notes.some(({ code }) => BLOCKLESS.includes(code));

/** The summary of what to buy, in one or two lines. */
const summed = (shared: Shared): string => {
  const wrong = missing(shared);
  const named = shared.problems.length ? [] : buys();
  const more = named.length - MOST_NAMED;
  const listed = more > 1 ? [...named.slice(0, MOST_NAMED), `${more} more things`] : [...named];
  if (named.length && lacksBlocks()) listed.push('no cloth for the blocks yet');
  summary.classList.toggle('wrong', wrong.length > 0);
  const size = finishedSize(shared);
  const isAsked = shared.size && size && isSame(size, shared.size) && way() !== 'bed';
  const all = [...wrong, listed.join('\u00a0· ')].filter(Boolean).join(' ');
  return unbroken(size && !wrong.length && !isAsked ? `For ${shown(size)}: ${all}` : all);
};

/** What is worth knowing about the size. */
const aboutSize = (shared: Shared): string[] => {
  const { size, inside, problems } = shared;
  const finished = finishedSize(shared);
  const said: string[] = problems.filter(({ isBegun }) => !isBegun).map(({ message }) => message);
  if (said.length || !finished) return said;
  if (way() === 'bed') said.push(`The quilt is ${shown(finished)}.`);
  if (isInside() && inside && size) {
    said.push(`Inside the borders the top is ${shown(inside)}.`);
    if (!isSame(finished, size)) said.push(`As you measured, the quilt is ${shown(finished)}.`);
  } else if (borders.isConnected) said.push(`With its borders the quilt is ${shown(finished)}.`);
  else if (way() === 'blocks') said.push(`The quilt is ${shown(finished)}.`);
  else if (way() === 'top') said.push('There are no borders, so this is the finished size.');
  const bed =
    batting.isConnected && batting.bed && batting.bed !== 'none' ? batting.answer?.quilt : undefined;
  if (bed)
    said.push(`The batting is for the bed, a quilt of ${shown(bed)}; the others are for the size above.`);
  return said;
};

/** What stands in the heading of a part that the quilt does not have. */
const ABSENT: Partial<Record<PartName, string>> = {
  top: 'not from blocks',
  block: 'no chart',
  borders: 'none',
  cutting: 'no cut list',
  sleeve: 'none',
};

/** The answer of a part in its heading. */
const answerOf = (part: Part): string => {
  const { name, element } = part;
  if (!present().includes(part)) return ABSENT[name] ?? 'not on the list';
  const { answer, teller } = element;
  if (!answer)
    return element.outcome.reckoning.issues.some(isPlanning)
      ? 'is being planned'
      : isWrong(part)
        ? 'look here'
        : 'not yet';
  if (name === 'top' && top.answer) return teller.size(top.answer.finished);
  if (name === 'borders' && borders.answer)
    return borders.answer.borders.map(({ buy }) => teller.bought(buy)).join(' + ');
  return teller.bought(answer.buy);
};

const mark = (problems: Problem[]): void => {
  for (const one of cells) {
    const isWrong = problems.some(({ name, isBegun }) => name === one.name && !isBegun);
    one.setAttribute('aria-invalid', `${isWrong}`);
    if (isWrong) one.setAttribute('aria-describedby', 'said');
    else one.removeAttribute('aria-describedby');
  }
};

/** Shows every answer as it is now. */
export const show = (shared: Shared): void => {
  mark(shared.problems);
  write(lines, summed(shared));
  write(flow, unbroken(aboutSize(shared).join(' ')));
  for (const part of parts) write(find('.said', part.section), unbroken(answerOf(part)));
};

/** Says the summary, once somebody has finished with a cell. */
export const announce = (): void => write(heard, lines.textContent);
