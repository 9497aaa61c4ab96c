import { expect } from 'chai';
import {
  answered,
  buttonIn,
  cell,
  cellIds,
  enter,
  find,
  how,
  leave,
  listen,
  messageAt,
  mount,
  press,
  pressButton,
  refused,
  row,
  valueIn,
  write,
  writeAndLeave,
  type Sheet,
} from './fixture.js';

/** Rows that a person can measure on her own cloth or quilt, and what shows that the rest follows. */
const MEASURABLE: [
  tag: string,
  attributes: Record<string, string>,
  id: string,
  measure: string,
  follows: string[],
][] = [
  ['quilt-backing', { shrinkage: '3' }, 'washedWidth', '30', ['panels', 'fabric']],
  ['quilt-binding', {}, 'around', '400', ['need', 'strips', 'fabric']],
  ['quilt-borders', {}, 'border1Sides', '75', ['border1FinishedLength', 'border2Sides', 'fabric']],
  ['quilt-borders', {}, 'border1Width', '3', ['border1Ends', 'border2Sides', 'fabric']],
  ['quilt-borders', { corners: 'mitred' }, 'border1TopLength', '75', ['border1Sides']],
  ['quilt-batting', { bed: 'twin', drop: '10' }, 'bedWidth', '75', ['needWidth', 'spare']],
];

for (const [tag, attributes, id, measure, follows] of MEASURABLE)
  describe(`${tag} ${JSON.stringify(attributes)}: ${id}, typed over`, () => {
    const shown = (sheet: Sheet): string[] => follows.map((row) => valueIn(sheet, row));
    let sheet: Sheet;
    let reckoned: string;
    let before: Sheet['result'];
    let shownBefore: string[];
    beforeEach(async () => {
      sheet = await mount(tag, attributes);
      reckoned = valueIn(sheet, id);
      before = answered(sheet);
      shownBefore = shown(sheet);
    });
    const isReckonedAgain = async (): Promise<void> => {
      await leave(sheet);
      expect(valueIn(sheet, id)).to.equal(reckoned);
      expect(sheet.result).to.deep.equal(before);
      expect(row(sheet, id).textContent).not.to.include('put back');
    };

    it('is a cell that starts as what is reckoned, and shows how', () => {
      expect(cell(sheet, id).matches('input')).to.equal(true);
      expect(how(sheet, id)).to.include('=').and.include(reckoned);
    });

    it('is marked, and everything below follows it at once', async () => {
      const plain = getComputedStyle(cell(sheet, id)).backgroundColor;
      const heard = listen(sheet);
      await write(sheet, id, measure);
      for (const [at, value] of shown(sheet).entries())
        expect(value, follows[at]).not.to.equal(shownBefore[at]);
      const { buy, working } = answered(sheet);
      await leave(sheet);
      expect(heard).to.deep.equal([`input ${buy.text}`, `change ${buy.text}`]);
      expect(valueIn(sheet, id)).to.equal(`${measure} in`);
      expect(how(sheet, id)).to.include('measured').and.include(reckoned);
      expect(getComputedStyle(cell(sheet, id)).backgroundColor).not.to.equal(plain);
      expect(working.find((at) => at.id === id)).to.include({ role: 'measured', inches: measure, reckoned });
      // Rows above it are as they were.
      const above = cellIds(sheet).slice(0, cellIds(sheet).indexOf(id));
      for (const at of above)
        expect(working.find((line) => line.id === at)).to.deep.equal(
          before.working.find((line) => line.id === at),
        );
    });

    it('one press puts the reckoned value back', async () => {
      await writeAndLeave(sheet, id, measure);
      const heard = listen(sheet);
      await pressButton(sheet, 'put back', id);
      expect(heard).to.deep.equal([`input ${before.buy!.text}`, `change ${before.buy!.text}`]);
      await isReckonedAgain();
    });

    it('emptying the cell puts it back, and shows no error on the way', async () => {
      await writeAndLeave(sheet, id, measure);
      await write(sheet, id, '');
      expect(sheet.result).to.deep.equal(before);
      expect([valueIn(sheet, id), messageAt(sheet, id)]).to.deep.equal(['', '']);
      await isReckonedAgain();
    });

    it('Escape puts back what was there: the reckoned value, or an earlier measure', async () => {
      await write(sheet, id, measure);
      await press(sheet, 'Escape');
      await isReckonedAgain();
      await writeAndLeave(sheet, id, measure);
      const first = sheet.result;
      await write(sheet, id, `${measure} + 1`);
      await press(sheet, 'Escape');
      await leave(sheet);
      expect(sheet.result).to.deep.equal(first);
    });

    it('looking in without typing leaves it reckoned', async () => {
      await enter(sheet, id);
      await isReckonedAgain();
    });

    it('says in its own row what is wrong with a measure, and can be put back from there', async () => {
      await writeAndLeave(sheet, id, measure);
      for (const wrong of ['abc', '-5', '0', '1e999', '9 miles']) {
        await writeAndLeave(sheet, id, wrong);
        expect(refused(sheet).errors.map(({ input }) => input)).to.deep.equal([id]);
        expect([valueIn(sheet, id), messageAt(sheet, id)]).to.deep.equal([
          wrong,
          sheet.result.errors![0]!.message,
        ]);
        expect(cell(sheet, id).getAttribute('aria-invalid')).to.equal('true');
      }
      await pressButton(sheet, 'put back', id);
      await isReckonedAgain();
    });

    it('goes with the property `measured`, and is gone after a change of it', async () => {
      sheet.measured = { [id]: `${measure} in` };
      await leave(sheet);
      expect(valueIn(sheet, id)).to.equal(`${measure} in`);
      expect(buttonIn(sheet, 'put back', id)).to.exist;
      sheet.measured = undefined;
      await isReckonedAgain();
      expect(find(sheet, '[part~=error]')).to.equal(null);
    });
  });
