import { expect } from 'chai';
import {
  all,
  answered,
  at,
  buttonIn,
  cell,
  cellIds,
  enter,
  isReckoned,
  leave,
  markedRows,
  mount,
  press,
  pressButton,
  row,
  settled,
  show,
  TAGS,
  text,
  unfold,
  valueIn,
  write,
  type Sheet,
} from './fixture.js';

for (const tag of TAGS)
  describe(`${tag}, by keyboard`, () => {
    for (const [forth, back] of [
      ['Enter', 'Shift+Enter'],
      ['ArrowDown', 'ArrowUp'],
    ] as const)
      it(`${forth} and ${back} go from cell to cell, and stop at the ends`, async () => {
        const sheet = await mount(tag);
        await unfold(sheet);
        const ids = cellIds(sheet);
        const passed = async (key: string): Promise<(string | undefined)[]> => {
          const seen = [at(sheet)];
          while (seen.length < ids.length) {
            // In a choice the arrows choose.
            const chooses = cell(sheet, at(sheet)!).matches('select');
            await press(sheet, !chooses ? key : key === forth ? 'Enter' : 'Shift+Enter');
            seen.push(at(sheet));
          }
          return seen;
        };
        await enter(sheet, ids[0]!);
        expect(await passed(forth)).to.deep.equal(ids);
        await press(sheet, 'Enter');
        expect(at(sheet)).to.equal(ids.at(-1));
        expect(await passed(back)).to.deep.equal(ids.toReversed());
        await press(sheet, 'Shift+Enter');
        expect(at(sheet)).to.equal(ids[0]);
      });

    it('selects the text of the cell it comes to, so that typing replaces it', async () => {
      const sheet = await mount(tag);
      await enter(sheet, 'width');
      await press(sheet, 'Enter');
      document.execCommand('insertText', false, '99');
      await settled(sheet);
      expect(valueIn(sheet, 'length')).to.equal('99');
    });

    it('marks the rows that a reckoned one came from, while it has the focus', async () => {
      const sheet = await mount(tag);
      await unfold(sheet);
      for (const { id, from } of answered(sheet).working.filter(({ role }) => role === 'reckoned')) {
        await enter(sheet, id);
        expect(at(sheet)).to.equal(id);
        expect(markedRows(sheet), id).to.have.members(from);
      }
      await leave(sheet);
      expect(markedRows(sheet)).to.deep.equal([]);
    });

    it('Escape puts back what was there, answer and all', async () => {
      const sheet = await mount(tag);
      const { result } = sheet;
      await write(sheet, 'width', '8');
      await write(sheet, 'width', '81 rods');
      expect(sheet.result).not.to.deep.equal(result);
      await press(sheet, 'Escape');
      expect([valueIn(sheet, 'width'), at(sheet)]).to.deep.equal(['58 in', 'width']);
      expect(answered(sheet).buy).to.deep.equal(answered(await mount(tag)).buy);
      await leave(sheet);
      expect(valueIn(sheet, 'width')).to.equal('58 in');
    });
  });

describe('Alt with an arrow', () => {
  // One ruler mark: 1/8 in, or 1 mm in metric (common practice, no source).
  const cases: [page: string, id: string, keys: string, shown: string][] = [
    ['width="58"', 'width', 'Up', '58 1/8 in'],
    ['width="58"', 'width', 'Up Up Up Up', '58 1/2 in'],
    ['width="58"', 'width', 'Down', '57 7/8 in'],
    ['width="58"', 'width', 'Up Down', '58 in'],
    ['width="147" units="cm"', 'width', 'Up', '147.1 cm'],
    ['width="147" units="cm"', 'width', 'Down Down', '146.8 cm'],
    ['width="147" units="cm" lang="fr"', 'width', 'Up', '147,1 cm'],
    ['width="58" overage="0"', 'overage', 'Down', '0 in'],
    ['width="58" shrinkage="3"', 'shrinkage', 'Up', '4 %'],
    ['width="58" shrinkage="0"', 'shrinkage', 'Down', '0 %'],
  ];
  for (const [page, id, keys, shown] of cases)
    it(`${keys} in the ${id} of ${page} comes to ${shown}`, async () => {
      const sheet = await show<Sheet>(`<quilt-backing length="70in" ${page}></quilt-backing>`);
      await unfold(sheet);
      await enter(sheet, id);
      for (const key of keys.split(' ')) await press(sheet, `Alt+Arrow${key}`);
      expect([at(sheet), valueIn(sheet, id)]).to.deep.equal([id, shown]);
      const fresh = await mount('quilt-backing', {
        units: sheet.units,
        lang: sheet.lang || undefined,
        length: '70in',
      });
      Object.assign(fresh, {
        width: sheet.width,
        overage: (sheet as never)['overage'],
        shrinkage: sheet.shrinkage,
      });
      expect(answered(sheet).fabric).to.equal(answered(fresh).fabric);
    });

  it('goes by the mark of the reader’s own ruler where the sheet has one', async () => {
    const sheet = await mount('quilt-borders', { mark: '1/16 in' });
    await enter(sheet, 'width');
    await press(sheet, 'Alt+ArrowUp');
    expect(valueIn(sheet, 'width')).to.equal('58 1/16 in');
  });

  it('leaves text that is no length as it is', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', 'wide');
    await press(sheet, 'Alt+ArrowUp');
    expect(valueIn(sheet, 'width')).to.equal('wide');
  });
});

describe('The fraction keys', () => {
  const groups = (sheet: Sheet): Element[] => all(sheet, '[role=group][aria-label]');

  it('stand by the cell that is typed in, and only there', async () => {
    const sheet = await mount('quilt-backing');
    expect(groups(sheet)).to.deep.equal([]);
    await enter(sheet, 'width');
    expect(groups(sheet).map((group) => group.closest('tr'))).to.deep.equal([row(sheet, 'width')]);
    expect(text(groups(sheet)[0]))
      .to.include('¼')
      .and.include('½')
      .and.include('¾')
      .and.include('⅛');
    await leave(sheet);
    expect(groups(sheet)).to.deep.equal([]);
  });

  it('stay away from a cell that takes no length', async () => {
    const sheet = await mount('quilt-backing');
    await unfold(sheet);
    for (const id of ['shrinkage', 'price', 'currency']) {
      await enter(sheet, id);
      expect(groups(sheet), id).to.deep.equal([]);
    }
  });

  it('type at the caret, over what is selected, and leave the caret behind the fraction', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', '58 + 4');
    cell(sheet, 'width').setSelectionRange(2, 2);
    await pressButton(sheet, '½', 'width');
    expect([valueIn(sheet, 'width'), cell(sheet, 'width').selectionStart]).to.deep.equal(['58½ + 4', 3]);
    // 58 1/2 + 4 + 2 × 4
    expect(valueIn(sheet, 'needWidth')).to.equal('70 1/2 in');
    cell(sheet, 'width').setSelectionRange(2, 3);
    await pressButton(sheet, '¾', 'width');
    expect([valueIn(sheet, 'width'), at(sheet)]).to.deep.equal(['58¾ + 4', 'width']);
    expect(valueIn(sheet, 'needWidth')).to.equal('70 3/4 in');
  });

  it('do not take the focus when they are pressed', async () => {
    const sheet = await mount('quilt-backing');
    await enter(sheet, 'width');
    const event = new PointerEvent('pointerdown', { bubbles: true, composed: true, cancelable: true });
    expect(buttonIn(sheet, '½', 'width').dispatchEvent(event)).to.equal(false);
  });
});

describe('Enter in a form', () => {
  it('goes to the next cell and does not send the form', async () => {
    const form = await show<HTMLFormElement>(
      '<form><quilt-backing width="58" length="70" name="b"></quilt-backing><button>Go</button></form>',
    );
    const sent: Event[] = [];
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      sent.push(event);
    });
    const sheet = form.querySelector('quilt-backing')!;
    await write(sheet, 'width', '60');
    await press(sheet, 'Enter');
    expect([at(sheet), sent.length, isReckoned(sheet, 'needWidth')]).to.deep.equal(['length', 0, true]);
  });
});
