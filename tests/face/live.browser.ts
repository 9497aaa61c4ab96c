import { expect } from 'chai';
import {
  answer,
  answered,
  cell,
  cellIds,
  enter,
  find,
  how,
  leave,
  listen,
  mount,
  press,
  pressButton,
  show,
  TAGS,
  text,
  unfold,
  valueIn,
  words,
  write,
  writeAndLeave,
  type Sheet,
} from './fixture.js';

for (const tag of TAGS)
  describe(`${tag}, as it is typed in`, () => {
    it('shows the answer, and every row of the working with how it was got', async () => {
      const sheet = await mount(tag);
      await unfold(sheet);
      const { buy, summary, working, cuts } = answered(sheet);
      expect(answer(sheet)).to.include(`Buy ${buy.text}`).and.include(summary);
      // Each border has its cell, and the next one too.
      expect(cellIds(sheet).filter((id) => !/^borders\d/.test(id))).to.have.members(
        working.map(({ id }) => id),
      );
      for (const { id, label, value, how: got } of working.filter(({ role }) => role !== 'given')) {
        expect(text(cell(sheet, id).closest('tr')!.querySelector('th'))).to.equal(label);
        expect(valueIn(sheet, id)).to.equal(value);
        expect(how(sheet, id)).to.equal(got.replace(/\s+/g, ' '));
      }
      for (const cut of cuts) expect(text(find(sheet, '[part~=sheet]'))).to.include(cut.text);
    });

    it('recalculates everything with each keystroke, with the same result as if it had been written at the start', async () => {
      const sheet = await mount(tag);
      const before = words(sheet);
      await write(sheet, 'width', '8');
      await write(sheet, 'width', '81 3/4');
      const fresh = await mount(tag, { width: '81 3/4' });
      expect(sheet.result).to.deep.equal(fresh.result);
      await leave(sheet);
      expect(words(sheet)).to.equal(words(fresh)).and.not.equal(before);
    });

    it('fires input and change like a native field: they bubble, leave shadow roots, and the result is new already', async () => {
      const host = await show('<div></div>');
      const sheet = await mount(tag, {}, host.attachShadow({ mode: 'open' }));
      const heard = [listen(sheet), listen(sheet, host)];
      const wider = answered(await mount(tag, { width: '81 3/4' })).buy.text;
      const both = answered(await mount(tag, { width: '81 3/4', length: '92' })).buy.text;
      await writeAndLeave(sheet, 'width', '81 3/4');
      await writeAndLeave(sheet, 'length', '92');
      await enter(sheet, 'length');
      await leave(sheet);
      const native = [`input ${wider}`, `change ${wider}`, `input ${both}`, `change ${both}`];
      expect(heard).to.deep.equal([native, native]);
    });

    it('fires change once for a value that it put in itself: a nudge, a fraction key, a value put back', async () => {
      const sheet = await mount(tag);
      const heard = listen(sheet);
      const changes = (): string[] => heard.splice(0).filter((event) => event.startsWith('change'));
      await enter(sheet, 'width');
      await press(sheet, 'Alt+ArrowUp');
      await press(sheet, 'Alt+ArrowUp');
      expect(changes()).to.deep.equal([]);
      await leave(sheet);
      expect(changes()).to.deep.equal([`change ${answered(sheet).buy.text}`]);
      await enter(sheet, 'width');
      await pressButton(sheet, '½');
      await leave(sheet);
      expect(changes()).to.have.length(1);
      await write(sheet, 'width', '90');
      await press(sheet, 'Escape');
      await leave(sheet);
      expect(changes(), 'nothing was changed in the end').to.deep.equal([]);
    });
  });

// How each is read is in tests/measure; here it is what the reader sees on leaving the cell.
describe('A cell, when it is left', () => {
  const cases: [typed: string, shown: string, page?: string][] = [
    ['52.5', '52 1/2 in'],
    ['52-1/2', '52 1/2 in'],
    ['52½"', '52 1/2 in'],
    ['4\' 4"', '52 in'],
    ['1 yd 16 in', '52 in'],
    ['= 3 * 12 1/2 + 4', '41 1/2 in'],
    ['(12 + 4) × 3', '48 in'],
    ['132 cm', '132 cm'],
    ['1.32 m', '132 cm'],
    ['132', '132 cm', 'units="cm"'],
    ['52 1/2"', '133.35 cm', 'units="cm"'],
    ['132,5', '132,5 cm', 'units="cm" lang="fr"'],
  ];
  for (const [typed, shown, page = ''] of cases)
    it(`shows ${typed} as ${shown} ${page && `with ${page}`}`, async () => {
      const sheet = await show<Sheet>(`<quilt-backing width="58in" length="70in" ${page}></quilt-backing>`);
      await write(sheet, 'width', typed);
      expect(valueIn(sheet, 'width')).to.equal(typed);
      await leave(sheet);
      expect(valueIn(sheet, 'width')).to.equal(shown);
    });

  it('keeps each way of typing the same length the same quilt', async () => {
    const sheet = await mount('quilt-backing');
    const needs = [];
    for (const [typed] of cases.slice(0, 3)) {
      await writeAndLeave(sheet, 'width', typed);
      needs.push(valueIn(sheet, 'needWidth'));
    }
    // 52 1/2 + 2 × 4
    expect(new Set(needs)).to.deep.equal(new Set(['60 1/2 in']));
  });
});
