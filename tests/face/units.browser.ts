import { expect } from 'chai';
import { OWN } from '../../src/face/choices.js';
import {
  all,
  answered,
  at,
  buttonIn,
  choose,
  GIVEN,
  gridCell,
  leave,
  listen,
  mount,
  pressButton,
  refused,
  show,
  TAGS,
  text,
  until,
  valueIn,
  write,
  writeAndLeave,
  writeInGrid,
  type Sheet,
} from './fixture.js';

const METRIC = 'Show in centimetres';
const INCHES = 'Show in inches';
const offers = (sheet: Sheet): boolean => all(sheet, 'button').some((at) => text(at).startsWith('Show in'));
const inches = (sheet: Sheet, id: string): string | undefined =>
  answered(sheet).working.find((row) => row.id === id)?.inches;

for (const tag of TAGS)
  describe(`${tag}, shown in other units`, () => {
    it('is the same quilt, also for numbers that the author wrote without a unit', async () => {
      const sheet = await mount(tag);
      const before = inches(sheet, 'width');
      await pressButton(sheet, METRIC);
      // 58 × 2.54
      expect(valueIn(sheet, 'width')).to.equal('147.32 cm');
      expect(inches(sheet, 'width')).to.equal(before);
      await pressButton(sheet, INCHES);
      expect(valueIn(sheet, 'width')).to.equal('58 in');
    });

    it('tells the page, once, by the events of a reader’s change', async () => {
      const sheet = await mount(tag);
      const heard = listen(sheet);
      await pressButton(sheet, METRIC);
      expect(heard.map((event) => event.split(' ')[0])).to.deep.equal(['input', 'change']);
    });

    it('reads typed text in those units, and keeps the value when the units change back', async () => {
      const sheet = await mount(tag);
      await pressButton(sheet, METRIC);
      await write(sheet, 'width', '150');
      // 150 ÷ 2.54; and 2 × 90 + 1/2
      expect(inches(sheet, 'width')).to.equal('59 7/127');
      await writeAndLeave(sheet, 'length', '= 2 * 90 + 1/2');
      expect(valueIn(sheet, 'length')).to.equal('180.5 cm');
      await writeAndLeave(sheet, 'width', '60 in');
      expect(valueIn(sheet, 'width')).to.equal('152.4 cm');
      await pressButton(sheet, INCHES);
      expect(valueIn(sheet, 'length')).to.equal('180.5 cm');
      expect(valueIn(sheet, 'width')).to.equal('60 in');
    });

    it('says what is wrong there as ever', async () => {
      const sheet = await mount(tag);
      await pressButton(sheet, METRIC);
      await writeAndLeave(sheet, 'width', 'abc');
      expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal(['width']);
      expect(valueIn(sheet, 'width')).to.equal('abc');
    });

    it('has no button for other units if something is sold by the unit, or if the author locks the units', async () => {
      for (const attributes of [
        { name: 'cloth' },
        { price: '12' },
        { lock: 'units' },
        { lock: 'width units' },
      ])
        expect(offers(await mount(tag, attributes)), JSON.stringify(attributes)).to.equal(false);
      expect(offers(await mount(tag))).to.equal(true);
    });
  });

it('several lengths in one cell have one unit, and then a cell each', async () => {
  const sheet = await mount('quilt-borders');
  await pressButton(sheet, METRIC);
  await writeAndLeave(sheet, 'borders', '5, 10 1/2');
  expect([valueIn(sheet, 'borders'), valueIn(sheet, 'borders2')]).to.deep.equal(['5 cm', '10.5 cm']);
});

it('a measured row is typed over in the units that are shown', async () => {
  const sheet = await mount('quilt-borders');
  await pressButton(sheet, METRIC);
  await writeAndLeave(sheet, 'border1Sides', '180');
  expect(valueIn(sheet, 'border1Sides')).to.equal('180 cm');
});

it('a reset shows the author’s units again', async () => {
  const form = await show<HTMLFormElement>(
    '<form><quilt-backing width="58" length="70"></quilt-backing></form>',
  );
  const sheet = form.firstElementChild as Sheet;
  await pressButton(sheet, METRIC);
  form.reset();
  await sheet.updateComplete;
  expect(valueIn(sheet, 'width')).to.equal(`${GIVEN['quilt-backing']!['width'] as string} in`);
  expect(buttonIn(sheet, METRIC)).to.not.equal(null);
});

describe('A bare number typed where other units are shown', () => {
  it('is in those, in the size of a sheet of cloth', async () => {
    const sheet = await mount('quilt-cutting', { list: 'A | square | 3 1/2 | 48' });
    await pressButton(sheet, METRIC);
    await choose(sheet, 'sheet', OWN);
    await until(() => at(sheet) === 'sheet');
    document.execCommand('insertText', false, '45 x 50');
    await leave(sheet);
    expect(answered(sheet).summary).to.match(/, (50 × 45|45 × 50) cm/);
  });

  it('is in those, in a cut list', async () => {
    const sheet = await mount('quilt-cutting', { units: 'cm', list: 'A | square | 9 | 48' });
    await pressButton(sheet, INCHES);
    expect(gridCell(sheet, 1, 3).value).to.equal('9 cm');
    await writeInGrid(sheet, 1, 3, '3 1/2');
    await leave(sheet);
    const [cut] = answered(sheet).cuts;
    expect([cut!.width, cut!.length]).to.deep.equal(['3 1/2', '3 1/2']);
  });
});
