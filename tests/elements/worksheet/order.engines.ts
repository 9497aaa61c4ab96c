import { expect } from 'chai';
import fc from 'fast-check';
import { exact, type Exact } from '../../../src/measure/exact.js';
import { answered, redrawn, settled, until, type Sheet } from '../../face/fixture.js';
import { IS_CHROMIUM } from '../../engine.js';
import { calm, FABRICS, list, needs, part, PARTS, quilt, worksheet, type Worksheet } from './quilt.js';

const NAMES = Object.keys(PARTS) as (keyof typeof PARTS)[];

/** The result of a worksheet, without the order of its content. */
const outcome = (sheet: Worksheet): unknown => {
  const { fabrics, items, total, notes } = list(sheet);
  return {
    fabrics: fabrics
      .map(({ letter, name, need, buy, cost, parts }) => ({
        letter,
        name,
        need,
        buy: buy.text,
        cost,
        parts: parts.map(({ title, need }) => `${title} ${need}`).sort(),
      }))
      .sort((a, b) => a.letter.localeCompare(b.letter)),
    items: items.map(({ title, fabric, text, cost }) => `${title} ${fabric} ${text} ${cost?.text}`).sort(),
    total,
    notes: [...notes].sort(),
    parts: NAMES.map((name) => {
      const { buy, fabric, cuts } = answered(part(sheet, name));
      return { name, buy, fabric, cuts };
    }),
  };
};

/** The width that flows to a part, as it is written. */
const flowing = (part: Sheet): string => part.teller.typed(part.flow!.values['width'] as Exact);

const make = (html: string): Element => {
  const template = document.createElement('template');
  template.innerHTML = html;
  return template.content.firstElementChild!;
};
const WRAPPERS = [
  '',
  '<div></div>',
  '<details><summary>More</summary></details>',
  '<section><article></article></section>',
  '<ul><li></li></ul>',
];
/** Puts an element into some other markup. */
const wrap = (element: Element, wrapper: string): Element => {
  if (!wrapper) return element;
  const around = make(wrapper);
  (around.firstElementChild?.matches('article, li') ? around.firstElementChild : around).append(element);
  return around;
};

/** Chromium tries as many as are worth trying; the other engines a third, since each run takes longer there. */
const runs = (inChromium: number): number => (IS_CHROMIUM ? inChromium : Math.ceil(inChromium / 3));

describe('in any order, nesting and time of its parts', () => {
  it('a worksheet has the same result', async () => {
    const expected = outcome(await quilt());
    const pieces = [...Object.values(PARTS), ...FABRICS];
    const arrangement = fc.record({
      order: fc.shuffledSubarray(
        pieces.map((_, at) => at),
        { minLength: pieces.length },
      ),
      wrappers: fc.array(fc.constantFrom(...WRAPPERS), {
        minLength: pieces.length,
        maxLength: pieces.length,
      }),
      /** How many are there from the start; the others come one by one. */
      early: fc.nat(pieces.length),
      /** Where each of the later ones goes: first or last. */
      first: fc.array(fc.boolean(), { minLength: pieces.length, maxLength: pieces.length }),
      /** Whether the page draws in between. */
      waits: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(arrangement, async ({ order, wrappers, early, first, waits }) => {
        const elements = order.map((at) => wrap(make(pieces[at]!), wrappers[at]!));
        const sheet = await worksheet('', 'currency="EUR"');
        sheet.append(...elements.slice(0, early));
        for (const [at, element] of elements.slice(early).entries()) {
          if (waits) await settled(sheet);
          if (first[at]) sheet.prepend(element);
          else sheet.append(element);
        }
        await calm(sheet);
        expect(outcome(sheet)).to.deep.equal(expected);
      }),
      { numRuns: runs(25) },
    );
  });

  it('taking parts out and putting them back leads back to the same', async () => {
    const sheet = await quilt();
    const expected = outcome(sheet);
    await fc.assert(
      fc.asyncProperty(fc.shuffledSubarray(NAMES, { minLength: 1 }), async (names) => {
        const taken = names.map((name) => part(sheet, name));
        for (const one of taken) one.remove();
        await calm(sheet);
        const gone = names.filter((name) => name !== 'batting' && name !== 'cutting');
        for (const { parts } of list(sheet).fabrics) {
          const titles = parts.map(({ title }) => title).join();
          if (gone.includes('backing')) expect(titles).to.not.include('Backing');
          if (gone.includes('binding')) expect(titles).to.not.include('Binding');
        }
        sheet.append(...taken);
        await calm(sheet);
        expect(outcome(sheet)).to.deep.equal(expected);
      }),
      { numRuns: runs(12) },
    );
  });

  it('typing settles at what the same values give from the start', async () => {
    const values = fc.record({
      block: fc.integer({ min: 6, max: 14 }),
      across: fc.integer({ min: 2, max: 5 }),
      borders: fc.constantFrom('2', '2, 5', '1 1/2, 3, 6'),
    });
    const sheet = await quilt();
    await fc.assert(
      fc.asyncProperty(values, async ({ block, across, borders }) => {
        Object.assign(part(sheet, 'borders'), { borders });
        Object.assign(part(sheet, 'top'), { block: String(block), across: String(across) });
        await calm(sheet);
        const now = outcome(sheet);
        const finished = answered<{ finished: { width: string } }>(part(sheet, 'borders')).finished.width;
        // geometry: blocks, sashing of 2 in round each, and every border twice
        const sum = borders.split(', ').reduce((all, one) => all + (one === '1 1/2' ? 1.5 : Number(one)), 0);
        expect(Number(finished)).to.equal(across * block + 2 * (across + 1) + 2 * sum);
        expect(flowing(part(sheet, 'binding'))).to.equal(`${finished} in`);
        Object.assign(part(sheet, 'top'), { block: '12', across: '4' });
        await calm(sheet);
        Object.assign(part(sheet, 'top'), { block: String(block), across: String(across) });
        await calm(sheet);
        expect(outcome(sheet)).to.deep.equal(now);
      }),
      { numRuns: runs(8) },
    );
  });
});

describe('a worksheet stops reckoning', () => {
  /** How often each sheet draws itself until nothing changes any more. */
  const draws = async (sheet: Worksheet, act: () => void): Promise<number[]> => {
    const counts = new Map<EventTarget, number>();
    const count = ({ target }: Event): void => void counts.set(target!, (counts.get(target!) ?? 0) + 1);
    sheet.addEventListener('reckoned', count);
    act();
    await calm(sheet);
    const before = [...counts.values()];
    // Whatever it does without end it would do in here too.
    for (let more = 0; more < 5; more++) await calm(sheet);
    expect([...counts.values()]).to.deep.equal(before);
    sheet.removeEventListener('reckoned', count);
    return before;
  };

  it('after a change, having drawn each part a few times at most', async () => {
    const sheet = await quilt('', {
      cutting: '',
      top: PARTS.top.replace('across="4"', 'across="2"').replace('down="5"', 'down="2"'),
    });
    const counts = await draws(sheet, () => Object.assign(part(sheet, 'top'), { block: '11' }));
    expect(counts.length).to.be.greaterThan(4);
    for (const count of counts) expect(count).to.be.lessThan(6);
  });

  it('when nothing changes, without drawing anything', async () => {
    const sheet = await quilt();
    expect(await draws(sheet, () => sheet.append(document.createElement('hr')))).to.deep.equal([]);
  });

  it('with several fabrics whose parts are planned together in the background', async () => {
    const rows = (letter: string): string =>
      `<quilt-cutting list="${letter} | square | 3 | 30"></quilt-cutting><quilt-cutting list="${letter} | rail | 2 x 5 | 30"></quilt-cutting>`;
    const sheet = await worksheet(['A', 'B', 'C', 'D'].map(rows).join(''));
    for (const { parts } of list(sheet).fabrics) expect(parts).to.have.length(2);
    expect(list(sheet).notes.join()).to.not.include('being planned');
  });
});

describe('a worksheet that is moved while a plan is being made', () => {
  it('goes on with it, in the page and in a frame', async () => {
    const sheet = await worksheet('<quilt-cutting list="A | square | 2 | 4"></quilt-cutting>');
    const stage = sheet.parentElement!;
    stage.insertAdjacentHTML('beforeend', '<section></section><iframe></iframe>');
    const places = [
      stage.querySelector('section')!,
      stage.querySelector('iframe')!.contentDocument!.body,
      stage.querySelector('section')!,
    ];
    for (const [at, place] of places.entries()) {
      const count = 30 + at;
      const sides = Array.from({ length: 20 }, (_, size) => 2 + size / 8);
      Object.assign(part(sheet, 'cutting'), {
        list: sides.map((side) => `A | s${side} | ${side} | ${count}`).join('\n'),
      });
      await redrawn(sheet);
      expect(list(sheet).notes.join()).to.include('it is still being planned');
      place.append(sheet);
      await until(() => !!list(sheet).fabrics[0]);
      await settled(sheet);
      expect(list(sheet).notes.join()).to.not.include('being planned');
      // geometry: strips of one size each are enough, on 40 in cloth
      const strips = sides.map((side) => Math.ceil(count / Math.floor(40 / side)) * side);
      expect(exact(needs(sheet)['A']!).lte(strips.reduce((all, tall) => all + tall))).to.be.true;
    }
  });
});

describe('a part', () => {
  it('that leaves its worksheet is on its own again', async () => {
    const sheet = await quilt();
    const binding = part(sheet, 'binding');
    sheet.parentElement!.append(binding);
    await calm(sheet);
    expect(binding.flow).to.equal(undefined);
    expect(binding.result.errors!.map(({ input }) => input)).to.deep.equal(['width', 'length']);
    expect(needs(sheet)['C']).to.not.equal(undefined);
    expect(list(sheet).fabrics.flatMap(({ parts }) => parts.map(({ title }) => title))).to.not.include(
      'Binding',
    );
  });

  it('that leaves its worksheet after the worksheet left the page is on its own again', async () => {
    const sheet = await quilt();
    const binding = part(sheet, 'binding');
    const page = sheet.parentElement!;
    sheet.remove();
    await settled(binding);
    page.append(binding);
    await settled(binding);
    expect(binding.flow).to.equal(undefined);
    expect(binding.result.errors!.map(({ input }) => input)).to.deep.equal(['width', 'length']);
  });

  it('that moves to another worksheet follows that one', async () => {
    const sheet = await quilt();
    const other = document.createElement('quilt-worksheet') as Worksheet;
    Object.assign(other, { width: '40', length: '50' });
    sheet.parentElement!.append(other);
    const binding = part(sheet, 'binding');
    other.append(binding);
    await calm(sheet);
    await calm(other);
    expect(flowing(binding)).to.equal('40 in');
    expect(needs(other)).to.have.property('C');
  });

  it('of a worksheet inside another belongs to the inner one', async () => {
    const sheet = await worksheet(
      `${FABRICS[2]!}<quilt-worksheet width="40" length="50"><quilt-fabric letter="C" name="Inner"></quilt-fabric>${PARTS.binding}</quilt-worksheet>${PARTS.backing}`,
      'width="58" length="70"',
    );
    const inner = sheet.querySelector<Worksheet>('quilt-worksheet')!;
    await calm(inner);
    expect(list(sheet).fabrics.map(({ parts }) => parts.map(({ title }) => title))).to.deep.equal([
      ['Backing'],
    ]);
    expect(
      list(inner).fabrics.map(({ name, parts }) => [name, ...parts.map(({ title }) => title)]),
    ).to.deep.equal([['Inner', 'Binding']]);
    expect(flowing(part(inner, 'binding'))).to.equal('40 in');
  });

  it('keeps what the reader typed when it is moved within its worksheet', async () => {
    const sheet = await quilt();
    const binding = part(sheet, 'binding') as Sheet & { allowance: string };
    binding.allowance = '15';
    sheet.prepend(binding);
    await calm(sheet);
    expect(binding.allowance).to.equal('15');
    expect(flowing(binding)).to.equal('72 in');
  });
});
