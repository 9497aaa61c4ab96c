import { expect } from 'chai';
import {
  all,
  answered,
  at,
  buttonIn,
  cell,
  enter,
  find,
  leave,
  listed,
  listen,
  looksStale,
  messageAt,
  mount,
  press,
  refused,
  row,
  settled,
  show,
  text,
  valueIn,
  write,
  writeAndLeave,
  type Sheet,
} from './fixture.js';

/** Waits for a state; the test's own timeout ends what never comes. */
const until = async (is: () => boolean): Promise<void> => {
  while (!is()) await new Promise(requestAnimationFrame);
};

/** What a browser announces by itself when it changes, unless it is told not to. */
const LIVE = 'output, [role=status], [role=alert], [role=log], [aria-live]';
const liveIn = (sheet: Sheet): Element[] => all(sheet, LIVE);
const announced = (sheet: Sheet): string => liveIn(sheet).map(text).join(' ');

/** Types a text key by key at the end of what stands there. */
const type = async (
  sheet: Sheet,
  id: string,
  keys: string,
  eachTime = (): void => undefined,
): Promise<void> => {
  await write(sheet, id, '');
  for (const key of keys) {
    document.execCommand('insertText', false, key);
    await settled(sheet);
    eachTime();
  }
};

describe('What is announced', () => {
  it('is the answer alone, once, after the reader has paused', async () => {
    const sheet = await mount('quilt-backing');
    expect(liveIn(sheet)).to.have.length(1);
    expect(announced(sheet), 'at first').to.equal('');
    let changes = 0;
    const watch = new MutationObserver((records) => (changes += records.length));
    for (const region of liveIn(sheet))
      watch.observe(region, { childList: true, characterData: true, subtree: true });
    // Its clock stands still while she types, however slow the machine is.
    const due = new Set<() => void>();
    const { setTimeout, clearTimeout } = window;
    Object.assign(window, {
      setTimeout: (act: () => void) => (due.add(act), act),
      clearTimeout: (act: () => void) => due.delete(act),
    });
    const pause = async (): Promise<void> => {
      due.forEach((act) => act());
      due.clear();
      await settled(sheet);
    };
    try {
      await enter(sheet, 'width');
      cell(sheet, 'width').select();
      for (const key of '61 1/2') {
        document.execCommand('insertText', false, key);
        await settled(sheet);
        expect(due.size).to.equal(1);
      }
      await pause();
      const { buy, summary } = answered(sheet);
      expect(announced(sheet)).to.include(`Buy ${buy.text}.`).and.include(summary);
      await leave(sheet);
      await pause();
      expect(changes).to.equal(1);
    } finally {
      Object.assign(window, { setTimeout, clearTimeout });
      watch.disconnect();
    }
  });

  it('is what is wrong, once it is', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', 'abc');
    await until(() => announced(sheet) !== '');
    expect(announced(sheet)).to.include(messageAt(sheet, 'width')).and.not.include('Buy');
  });

  it('is invisible, and also announces a copy', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', '60');
    await until(() => announced(sheet) !== '');
    const { width, height } = liveIn(sheet)[0]!.getBoundingClientRect();
    expect([width, height]).to.deep.equal([1, 1]);
  });

  it('is not what changes in a part because of another', async () => {
    const worksheet = await show<Sheet>(
      '<quilt-worksheet width="58" length="70"><quilt-backing></quilt-backing><quilt-binding></quilt-binding></quilt-worksheet>',
    );
    const [backing, binding] = [...worksheet.children] as [Sheet, Sheet];
    await write(backing, 'width', '70');
    await until(() => announced(backing) !== '');
    expect([announced(binding), announced(worksheet)]).to.deep.equal(['', '']);
  });
});

describe('An entry that may still become a length', () => {
  for (const keys of ['61 1/2', '1 yd 16 in', '3 * 12 + 4', '(20 + 4) * 3', '60.5', '152.4 cm'])
    it(`${keys} is never called wrong while it is typed`, async () => {
      const sheet = await mount('quilt-backing');
      await enter(sheet, 'width');
      cell(sheet, 'width').select();
      let stale = 0;
      for (const key of keys) {
        document.execCommand('insertText', false, key);
        await settled(sheet);
        expect(find(sheet, '[part~=error], [aria-invalid]'), valueIn(sheet, 'width')).to.equal(null);
        const shown = find(sheet, '[part~=amount]');
        expect(text(shown)).not.to.equal('');
        if (sheet.result.errors) {
          stale += 1;
          expect(looksStale(shown)).to.equal(true);
          expect(getComputedStyle(shown!.parentElement!).textDecorationLine).to.equal('none');
        }
      }
      expect(stale > 0).to.equal(keys !== '60.5');
      answered(sheet);
    });

  it('is wrong once its cell is left, or Enter is pressed', async () => {
    const sheet = await mount('quilt-backing');
    await write(sheet, 'width', '61 1/');
    expect([messageAt(sheet, 'width'), refused(sheet).errors.length]).to.deep.equal(['', 1]);
    await leave(sheet);
    expect(messageAt(sheet, 'width')).to.equal(refused(sheet).errors[0]!.message);
    expect(cell(sheet, 'width').ariaInvalid).to.equal('true');
    expect(valueIn(sheet, 'width')).to.equal('61 1/');
    await write(sheet, 'width', '3 *');
    expect(messageAt(sheet, 'width')).to.equal('');
    await press(sheet, 'Enter');
    expect(messageAt(sheet, 'width')).to.equal(refused(sheet).errors[0]!.message);
  });

  it('is wrong as soon as it cannot become one', async () => {
    const sheet = await mount('quilt-backing');
    await type(sheet, 'width', '61 1/');
    document.execCommand('insertText', false, 'q');
    await settled(sheet);
    expect(messageAt(sheet, 'width')).to.equal(refused(sheet).errors[0]!.message);
  });
});

describe('Both sides typed in the place of one', () => {
  for (const id of ['width', 'length'])
    it(`fill both from the ${id}; Escape takes both back`, async () => {
      const sheet = await mount('quilt-backing');
      const heard = listen(sheet);
      await type(sheet, id, '60x72', () => expect(messageAt(sheet, id)).to.equal(''));
      const { buy } = answered(sheet);
      expect(buy).to.deep.equal(answered(await mount('quilt-backing', { width: '60', length: '72' })).buy);
      await leave(sheet);
      expect([valueIn(sheet, 'width'), valueIn(sheet, 'length')]).to.deep.equal(['60 in', '72 in']);
      expect(heard.at(-1)).to.equal(`change ${buy.text}`);
      await write(sheet, id, '80 by 90');
      await press(sheet, 'Escape');
      await leave(sheet);
      expect([valueIn(sheet, 'width'), valueIn(sheet, 'length')]).to.deep.equal(['60 in', '72 in']);
      expect(answered(sheet).buy).to.deep.equal(buy);
    });

  it('say how where one is locked, or an author wrote them so', async () => {
    for (const sheet of [
      await mount('quilt-backing', { lock: 'length' }),
      await mount('quilt-backing', { width: '60x72' }),
    ]) {
      await writeAndLeave(sheet, 'width', '60x72');
      if (sheet.lock)
        expect(messageAt(sheet, 'width')).to.equal(
          '“60x72” is two sides. Write one here, like 60, and 72 as the other.',
        );
      else expect(valueIn(sheet, 'length')).to.equal('72 in');
    }
  });
});

describe('A quilt’s side with the sign of feet', () => {
  it('is asked about where it is longer than any quilt', async () => {
    const sheet = await mount('quilt-backing');
    await writeAndLeave(sheet, 'width', "60'");
    expect(messageAt(sheet, 'width')).to.equal(
      "“60'” is 60 feet, 720 in. Did you mean 60 in? Write 60 in, or 60 ft.",
    );
    for (const [typed, shown] of [
      ["8'", '96 in'],
      ['60 ft', '720 in'],
      ["60''", '60 in'],
    ] as const) {
      await writeAndLeave(sheet, 'width', typed);
      expect([valueIn(sheet, 'width'), messageAt(sheet, 'width')]).to.deep.equal([shown, '']);
    }
  });
});

describe('Put back, by keyboard', () => {
  it('goes to the cell', async () => {
    const borders = await mount('quilt-borders');
    await writeAndLeave(borders, 'border1Sides', '75');
    buttonIn(borders, 'put back', 'border1Sides').focus();
    await press(borders, 'Enter');
    expect([at(borders), valueIn(borders, 'border1Sides')]).to.deep.equal(['border1Sides', '70 1/2 in']);
    const worksheet = await show<Sheet>(
      '<quilt-worksheet width="58" length="70"><quilt-backing width="60"></quilt-backing></quilt-worksheet>',
    );
    const backing = worksheet.firstElementChild as Sheet;
    buttonIn(backing, 'put back', 'width').focus();
    await press(backing, 'Enter');
    expect([at(backing), valueIn(backing, 'width')]).to.deep.equal(['width', '58 in']);
  });
});

describe('A cell that was emptied', () => {
  it('says that it is missing, and is marked; one that nobody touched is not', async () => {
    const sheet = await mount('quilt-backing');
    await writeAndLeave(sheet, 'width', '');
    expect(messageAt(sheet, 'width')).to.include('Quilt width is missing');
    expect(cell(sheet, 'width').ariaInvalid).to.equal('true');
    const untouched = await mount('quilt-backing', { width: undefined });
    expect(messageAt(untouched, 'width')).to.include('Quilt width is missing');
    expect(cell(untouched, 'width').ariaInvalid).to.equal(null);
  });
});

describe('Beside a wrong cell', () => {
  it('the cost and the sizes that may be typed over are stale too', async () => {
    const top = await mount('quilt-top', {
      block: '12',
      across: '4',
      down: '5',
      sashing: '2',
      price: '10',
    });
    const stale = (): boolean[] => [
      getComputedStyle(find(top, '.buy')!).textDecorationLine === 'line-through',
      ...['finishedWidth', 'finishedLength'].map((id) => looksStale(cell(top, id))),
    ];
    expect(text(find(top, '.buy'))).to.include(answered(top).cost!.text);
    expect(stale()).to.deep.equal([false, false, false]);
    await write(top, 'block', 'abc');
    expect(stale()).to.deep.equal([true, true, true]);
    await write(top, 'block', '12');
    await writeAndLeave(top, 'finishedWidth', 'abc');
    expect(stale()).to.deep.equal([true, false, true]);
  });
});

describe('Lists', () => {
  it('of packages and rolls are in order of size', async () => {
    const batting = await mount('quilt-batting', {
      packages: 'big 120 x 120 @ 30; small 40 x 50 @ 9; right 80 x 90 @ 12',
      roll: '108, 90',
    });
    expect(listed(batting, 'Packages').map(([name]) => name)).to.deep.equal(['small', 'right', 'big']);
    expect(listed(batting, 'From the roll').map(([width]) => width)).to.deep.equal(['90 in', '108 in']);
  });

  it('carry their heads where text is so large that values stand below one another', async () => {
    const sheet = await mount('quilt-backing');
    sheet.style.cssText = 'font-size: 32px; inline-size: 320px';
    const [, seams] = all<HTMLTableRowElement>(sheet, '[part~=list] tbody tr')
      .filter((line) => line.cells.length === 4)
      .map((line) => line.cells[1]!);
    expect(getComputedStyle(seams!.closest('table')!.tHead!).display).to.equal('none');
    // Firefox says what was written, others what is shown.
    expect(getComputedStyle(seams!, '::before').content).to.match(/Seams|attr/);
    expect(seams!.dataset['head']).to.equal('Seams');
    sheet.style.cssText = '';
    expect(getComputedStyle(seams!, '::before').content).to.equal('none');
  });
});

describe('A border', () => {
  const borders = (sheet: Sheet): unknown => (sheet as never as { borders: unknown }).borders;
  const widths = (sheet: Sheet): string[] =>
    ['borders', 'borders2', 'borders3'].map((id) => (find(sheet, `#${id}`) ? valueIn(sheet, id) : 'none'));

  it('has a cell of its own; another stays when one is typed over', async () => {
    const sheet = await mount('quilt-borders');
    expect(widths(sheet)).to.deep.equal(['2 in', '4 1/2 in', '']);
    expect(text(row(sheet, 'borders2').querySelector('th'))).to.equal('Border 2');
    const heard = listen(sheet);
    await writeAndLeave(sheet, 'borders', '2 1/4');
    expect(widths(sheet)).to.deep.equal(['2 1/4 in', '4 1/2 in', '']);
    const { buy } = answered(sheet);
    expect(buy).to.deep.equal(answered(await mount('quilt-borders', { borders: '2 1/4, 4 1/2' })).buy);
    expect(heard).to.deep.equal([`input ${buy.text}`, `change ${buy.text}`]);
    expect(borders(sheet)).to.equal('2 1/4 in, 4 1/2 in');
  });

  it('has its own unit, and its own decimal comma', async () => {
    const sheet = await mount('quilt-borders', { borders: '2, 4' });
    await writeAndLeave(sheet, 'borders2', '10 cm');
    expect(widths(sheet)).to.deep.equal(['2 in', '10 cm', '']);
    await writeAndLeave(sheet, 'borders', '3');
    expect(widths(sheet)).to.deep.equal(['3 in', '10 cm', '']);
    const german = await mount('quilt-borders', { units: 'cm', lang: 'fr', borders: '5; 10,5' });
    await writeAndLeave(german, 'borders', '6,5');
    expect(widths(german)).to.deep.equal(['6,5 cm', '10,5 cm', '']);
  });

  it('is added in the cell after the last, and Escape takes it back', async () => {
    const sheet = await mount('quilt-borders');
    const before = sheet.result;
    await write(sheet, 'borders3', '6');
    expect(answered<{ borders: unknown[] }>(sheet).borders).to.have.length(3);
    await press(sheet, 'Escape');
    await leave(sheet);
    expect(sheet.result).to.deep.equal(before);
    await writeAndLeave(sheet, 'borders3', '6, 8');
    expect(borders(sheet)).to.equal('2 in, 4 1/2 in, 6 in, 8 in');
    await enter(sheet, 'borders5');
    await leave(sheet);
    expect(borders(sheet)).to.equal('2 in, 4 1/2 in, 6 in, 8 in');
  });

  it('is taken away by its button, and the focus stays there', async () => {
    const sheet = await mount('quilt-borders');
    const heard = listen(sheet);
    buttonIn(sheet, 'take border 1 away').focus();
    await press(sheet, 'Enter');
    expect([borders(sheet), at(sheet)]).to.deep.equal(['4 1/2 in', 'borders']);
    const { buy } = answered(sheet);
    expect(heard).to.deep.equal([`input ${buy.text}`, `change ${buy.text}`]);
  });

  it('that was emptied or cannot be read says so in its own row, and loses no other', async () => {
    const sheet = await mount('quilt-borders', { borders: '2, 4 1/2, 6' });
    for (const [typed, message] of [
      ['', 'Border 2 is missing'],
      ['wide', '“wide” is not a length'],
      ['-1', 'Border 2 cannot be less than 0'],
    ] as const) {
      await writeAndLeave(sheet, 'borders2', typed);
      expect(widths(sheet)).to.deep.equal(['2 in', typed, '6 in']);
      expect(messageAt(sheet, 'borders2')).to.include(message);
      expect(cell(sheet, 'borders2').ariaInvalid).to.equal('true');
      expect(messageAt(sheet, 'borders')).to.equal('');
      expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['borders']);
    }
    await writeAndLeave(sheet, 'borders2', '4 1/2');
    expect(answered(sheet).buy).to.deep.equal(
      answered(await mount('quilt-borders', { borders: '2, 4 1/2, 6' })).buy,
    );
    await writeAndLeave(sheet, 'borders3', '');
    expect(messageAt(sheet, 'borders3')).to.include('Border 3 is missing');
  });

  it('can be half typed, and is asked for if it is missing', async () => {
    const sheet = await mount('quilt-borders');
    await write(sheet, 'borders2', '5 1/');
    expect(messageAt(sheet, 'borders2')).to.equal('');
    await writeAndLeave(sheet, 'borders2', '5 1/4');
    expect(widths(sheet)).to.deep.equal(['2 in', '5 1/4 in', '']);
    const none = await mount('quilt-borders', { borders: undefined });
    expect(messageAt(none, 'borders')).to.include('Write the widths of the borders');
    await writeAndLeave(none, 'borders', '3');
    expect(borders(none)).to.equal('3 in');
    answered(none);
  });

  it('that is locked is no cell', async () => {
    const sheet = await mount('quilt-borders', { lock: 'borders' });
    expect(cell(sheet, 'borders2').matches('input')).to.equal(false);
    expect(find(sheet, '[data-row=borders3]')).to.equal(null);
  });
});
