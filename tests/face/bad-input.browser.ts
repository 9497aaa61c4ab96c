import { expect } from 'chai';
import {
  all,
  answer,
  answered,
  cell,
  cellIds,
  find,
  GIVEN,
  isReckoned,
  listen,
  looksStale,
  messageAt,
  mount,
  refused,
  settled,
  TAGS,
  text,
  unfold,
  valueIn,
  words,
  write,
  writeAndLeave,
  type Attributes,
  type Sheet,
} from './fixture.js';

const page = window as Window & { hit?: string };

/** Texts that are no length of a quilt's side. */
const BAD: [what: string, typed: string][] = [
  ['nothing', ''],
  ['only spaces', '   '],
  ['a word', 'abc'],
  ['nought', '0'],
  ['less than nothing', '-5'],
  ['a fraction over nought', '1/0'],
  ['more than a number can hold', '1e999'],
  ['10,000 digits', '7'.repeat(10_000)],
  ['NaN', 'NaN'],
  ['Infinity', 'Infinity'],
  ['undefined', 'undefined'],
  ['markup', '<img src=x onerror="window.hit = 1">'],
  ['a quilt 3 miles wide', `${3 * 5280} ft`],
  ['3 miles in bare inches', String(3 * 5280 * 12)],
  ['two numbers', '58 70'],
];

/** What is wrong only there, or only together with the rest. */
const SPECIAL: [what: string, tag: string, id: string, typed: string, attributes?: Attributes][] = [
  ['an overage larger than the quilt', 'quilt-backing', 'overage', '100'],
  ['an overage larger than a small quilt', 'quilt-backing', 'overage', '12', { width: '10', length: '11' }],
  ['an overage larger than the quilt', 'quilt-batting', 'overage', '100'],
  ['an overage larger than a small quilt', 'quilt-batting', 'overage', '12', { width: '10', length: '11' }],
  ['a strip wider than the cloth', 'quilt-binding', 'stripWidth', '41'],
  [
    'a strip wider than the cloth, from its finished width',
    'quilt-binding',
    'finished',
    '5',
    { 'fabric-width': '20' },
  ],
  ['a list of borders with one bad entry', 'quilt-borders', 'borders', 'wide'],
  ['a wanted size without a second side', 'quilt-borders', 'target', '60'],
  ['a wanted size smaller than the top', 'quilt-borders', 'target', '50 x 60'],
  ['a seam that leaves nothing of the cloth', 'quilt-backing', 'seam', '4', { 'fabric-width': '8' }],
  ['cloth of no width', 'quilt-backing', 'fabricWidth', '0'],
  [
    'a package list with one bad entry',
    'quilt-batting',
    'packages',
    'small 40 x 50; large 90; huge 120 x 120',
  ],
  ['a package of a size that is none', 'quilt-batting', 'packages', 'small 40 x 50; odd 1/0 x 50'],
  ...TAGS.flatMap((tag): [string, string, string, string][] => [
    ['shrinkage of 100 %', tag, 'shrinkage', '100 %'],
    ['shrinkage that is no number', tag, 'shrinkage', 'some'],
    ['a price that is none', tag, 'price', 'cheap'],
    ['a currency that is none', tag, 'currency', 'dollars'],
  ]),
];

const isClean = (sheet: Sheet): void => {
  expect(words(sheet)).not.to.match(/\b(NaN|undefined|null|Infinity)\b|\[object/);
  expect(all(sheet, 'img')).to.deep.equal([]);
  expect(page.hit).to.equal(undefined);
};

/** The row says in a sentence what is wrong, tied to its cell; the result has only that. */
const saysSo = (sheet: Sheet, id: string): void => {
  const { errors, ...rest } = refused(sheet);
  expect(errors.map(({ input }) => input)).to.deep.equal([id]);
  const { message } = errors[0]!;
  expect(message).to.match(/^[\p{Lu}“].{8,240}[.?]$/su);
  expect(messageAt(sheet, id)).to.equal(message.replace(/\s+/g, ' ').trim());
  const describedBy = cell(sheet, id).getAttribute('aria-describedby') ?? '';
  const description = describedBy.match(/\S+/g)?.map((name) => text(find(sheet, `#${CSS.escape(name)}`)));
  expect(description?.join(' '), 'aria-describedby').to.include(messageAt(sheet, id));
  if (valueIn(sheet, id)) expect(cell(sheet, id).ariaInvalid, 'aria-invalid').to.equal('true');
  expect(rest).not.to.have.any.keys('buy', 'fabric', 'spare', 'cuts', 'cost');
  isClean(sheet);
};

/** The last good answer, drawing and lists are still there, and nobody would take them for an answer. */
const keeps = (sheet: Sheet, good: ReturnType<typeof answered>, id: string): void => {
  expect(answer(sheet)).to.include(`Buy ${good.buy.text}`);
  const label = text(cell(sheet, id).closest('tr')!.querySelector('th'));
  expect(answer(sheet)).to.include(label);
  const amount = all(sheet, '[part~=answer] *').filter((at) => text(at) === good.buy.text);
  expect(amount).to.have.length(1);
  const outputs = all(sheet, '[part~=value]');
  for (const at of [...amount, ...all(sheet, '[part~=figure], [part~=list]'), ...outputs])
    expect(looksStale(at), at.textContent).to.equal(true);
  const values = good.working.filter((line) => line.role === 'reckoned').map(({ value }) => value);
  expect(outputs.map((at) => text(at))).to.deep.equal(values);
};

const isWell = (sheet: Sheet): void => {
  answered(sheet);
  for (const at of all(sheet, '[part~=answer] *, [part~=figure], [part~=list], [part~=value]'))
    expect(looksStale(at)).to.equal(false);
  expect(find(sheet, '[part~=error], [aria-invalid=true]')).to.equal(null);
};

const typedIn =
  (tag: string, id: string, typed: string, attributes: Attributes = {}) =>
  async (): Promise<void> => {
    const sheet = await mount(tag, attributes);
    await unfold(sheet);
    const good = answered(sheet);
    const before = valueIn(sheet, id);
    isWell(sheet);
    const heard = listen(sheet);
    for (const act of [write, writeAndLeave]) {
      await act(sheet, id, typed);
      // A length that only does not fit the rest is normalised as any other.
      expect([typed.trim(), typed.replace(/\d+/g, '$& in')]).to.include(valueIn(sheet, id));
      // It may still become 0.5, or 60 x 80.
      if (act === write && (typed === '0' || (id === 'target' && typed === '60'))) {
        expect(messageAt(sheet, id)).to.equal('');
        continue;
      }
      saysSo(sheet, id);
      keeps(sheet, good, id);
    }
    expect(new Set(heard)).to.deep.equal(new Set(['input errors', 'change errors']));
    await writeAndLeave(sheet, id, before);
    if (!(id in sheet) || before) expect(sheet.result).to.deep.equal(good);
    isWell(sheet);
  };

for (const tag of TAGS) {
  describe(`${tag}, bad input`, () => {
    for (const [what, typed] of BAD) {
      it(`${what}, typed as the width`, typedIn(tag, 'width', typed));

      it(`${what}, written by the author as the width`, async () => {
        const sheet = await mount(tag, { width: typed });
        saysSo(sheet, 'width');
        expect(valueIn(sheet, 'width')).to.equal(typed.trim());
        expect(answer(sheet)).not.to.include('Buy');
        await writeAndLeave(sheet, 'width', '58');
        expect(sheet.result).to.deep.equal((await mount(tag)).result);
        isWell(sheet);
      });
    }

    it('without any attribute asks for what is missing', async () => {
      const bare = Object.fromEntries(Object.keys(GIVEN[tag]!).map((name) => [name, undefined]));
      const sheet = await mount(tag, bare);
      expect(refused(sheet).errors.map(({ input }) => input)).to.include.members(['width', 'length']);
      isClean(sheet);
      for (const [name, value] of Object.entries(GIVEN[tag]!))
        await writeAndLeave(sheet, name, value as string);
      expect(answered(sheet).buy).to.deep.equal(answered(await mount(tag)).buy);
      isWell(sheet);
    });

    it('in two rows shows in both, and can be corrected one by one', async () => {
      const sheet = await mount(tag);
      const good = answered(sheet);
      await writeAndLeave(sheet, 'width', 'abc');
      await writeAndLeave(sheet, 'length', '1/0');
      expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['width', 'length']);
      expect([messageAt(sheet, 'width'), messageAt(sheet, 'length')]).not.to.include('');
      keeps(sheet, good, 'width');
      keeps(sheet, good, 'length');
      await writeAndLeave(sheet, 'width', '58');
      saysSo(sheet, 'length');
      await writeAndLeave(sheet, 'length', '70');
      isWell(sheet);
    });

    it('cannot be taken away as if it were an answer', async () => {
      const sheet = await mount(tag);
      await write(sheet, 'width', 'abc');
      const actions = all<HTMLButtonElement>(sheet, '.actions button, button[part~=action]').filter((at) =>
        /^(copy|download|print)/i.test(text(at)),
      );
      // What copies and downloads is behind the second.
      expect(actions.map(({ disabled }) => disabled)).to.deep.equal([true, true]);
    });

    it('as a property of any type never throws', async () => {
      const sheet = await mount(tag);
      for (const value of [null, NaN, Infinity, -1, 1e300, {}, [], () => 1, 'a text', true, 10n ** 400n]) {
        (sheet as never as { width: unknown }).width = value;
        await settled(sheet);
        expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['width']);
        isClean(sheet);
      }
    });

    for (const attribute of [
      'units',
      'increment',
      ...(tag === 'quilt-batting' ? ['bed'] : []),
      ...(tag === 'quilt-binding' ? ['fold', 'cut', 'join'] : []),
      ...(tag === 'quilt-borders' ? ['corners', 'grain', 'join'] : []),
    ])
      it(`an unknown value of the attribute ${attribute}`, async () => {
        const sheet = await mount(tag, { [attribute]: 'constructor' });
        const { errors } = refused(sheet);
        expect(errors.map(({ input }) => input)).to.deep.equal([attribute]);
        // What may be chosen is said to a reader in words, and to an author in codes.
        const [wrong] = errors[0]!.message.split(' Write ');
        expect(text(find(sheet, '[part~=error]')).split(/ Write | Choose /)[0]).to.equal(wrong);
        if (cellIds(sheet).includes(attribute))
          expect(messageAt(sheet, attribute).split(/ Write | Choose /)[0]).to.equal(wrong);
        isClean(sheet);
        sheet.removeAttribute(attribute);
        await settled(sheet);
        expect(answered(sheet).buy).to.deep.equal(answered(await mount(tag)).buy);
        isWell(sheet);
      });
  });
}

describe('Bad input of one field', () => {
  for (const [what, tag, id, typed, attributes] of SPECIAL)
    it(`${what}: ${typed} as the ${id} of ${tag}`, typedIn(tag, id, typed, attributes));

  it('a border wider than the cloth has nothing left for its joins', async () => {
    const sheet = await mount('quilt-borders');
    const good = answered(sheet);
    await write(sheet, 'borders', '2, 41');
    saysSo(sheet, 'join');
    keeps(sheet, good, 'join');
  });

  it('a choice that there is not: a reader is told the choices in words, and an author in codes', async () => {
    const sheet = await mount('quilt-borders', { corners: 'round' });
    expect(messageAt(sheet, 'corners')).to.equal(
      '“round” is not one of the choices. Choose sides first, ends first, corner squares or mitred.',
    );
    expect(
      refused(sheet)
        .errors.map(({ message }) => message)
        .join(),
    ).to.include('sides-first, ends-first, squares or mitred');
  });

  it('names the package that cannot be read', async () => {
    const sheet = await mount('quilt-batting', { packages: 'small 40 x 50; large 90; huge 120 x 120' });
    expect(refused(sheet).errors[0]!.message).to.include('large 90').and.not.include('huge');
  });
});

// A row that only appears with a good answer keeps its place beside one that is wrong.
describe('A reckoned row', () => {
  it('keeps its last good value, struck out, while a cell above it is wrong', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', 'abc');
    expect(isReckoned(sheet, 'needWidth')).to.equal(true);
    // 58 + 2 × 4
    expect(valueIn(sheet, 'needWidth')).to.equal('66 in');
    expect(looksStale(cell(sheet, 'needWidth'))).to.equal(true);
  });

  it('is struck out; what the author locked is no answer, and stays as it is', async () => {
    const sheet = await mount('quilt-backing', { lock: 'overage one-way' });
    await write(sheet, 'width', 'abc');
    const stale = ['overage', 'oneWay', 'needWidth', 'spare'].map((id) => looksStale(cell(sheet, id)));
    expect(stale).to.deep.equal([false, false, true, true]);
    const strike = getComputedStyle(cell(sheet, 'needWidth')).textDecorationLine;
    expect(strike).to.equal('line-through');
  });
});
