import { expect } from 'chai';
import {
  answered,
  listen,
  mount,
  settled,
  show,
  TAGS,
  unfold,
  valueIn,
  write,
  writeAndLeave,
  cell,
  type Sheet,
} from './fixture.js';

const formWith = async (
  tag: string,
  attributes: Record<string, string | undefined> = {},
): Promise<{ form: HTMLFormElement; sheet: Sheet }> => {
  const form = await show<HTMLFormElement>('<form><fieldset></fieldset></form>');
  return { form, sheet: await mount(tag, { name: 'amount', ...attributes }, form.firstElementChild!) };
};
const sent = (form: HTMLFormElement): [string, FormDataEntryValue][] => [...new FormData(form)];

/** A mixed number as shops write it, in decimals: `3 3/4` → 3.75. */
const decimal = (mixed: string): number =>
  mixed
    .split(' ')
    .reduce((sum, part) => sum + Number(part.split('/').reduce((top, under) => String(+top / +under))), 0);

for (const tag of TAGS)
  describe(`${tag} in a form`, () => {
    it('sends the amount to buy as a decimal number, under its name', async () => {
      const { form, sheet } = await formWith(tag);
      expect(sent(form)).to.deep.equal([['amount', sheet.value]]);
      expect(sheet.value).to.match(/^\d+(\.\d{1,4})?$/);
      expect(Number(sheet.value)).to.be.closeTo(decimal(answered(sheet).buy.amount), 0.00005);
      expect(sheet.form).to.equal(form);
    });

    it('follows what is typed, in units of the shop’s step', async () => {
      const { form, sheet } = await formWith(tag);
      await write(sheet, 'width', '30');
      const small = sent(form);
      await write(sheet, 'width', '82');
      expect(small).to.deep.equal([['amount', (await mount(tag, { width: '30' })).value]]);
      expect(sent(form)).to.deep.equal([['amount', (await mount(tag, { width: '82' })).value]]);
    });

    it('sends nothing while an input is wrong, and nothing without a name', async () => {
      const { form, sheet } = await formWith(tag);
      await write(sheet, 'width', 'abc');
      expect([sheet.value, sent(form)]).to.deep.equal(['', []]);
      await write(sheet, 'width', '58');
      expect(sent(form)).to.have.length(1);
      sheet.name = undefined;
      await settled(sheet);
      expect(sent(form)).to.deep.equal([]);
    });

    it('goes back to what the author wrote when the form is reset', async () => {
      const { form, sheet } = await formWith(tag, { shrinkage: '3' });
      const { result } = sheet;
      const value = sent(form);
      await unfold(sheet);
      await writeAndLeave(sheet, 'width', '99');
      await writeAndLeave(sheet, 'shrinkage', '5');
      await writeAndLeave(sheet, 'price', '7');
      const measurable = answered(sheet).working.find(({ role }) => role === 'measurable');
      if (measurable) await writeAndLeave(sheet, measurable.id, '31');
      for (const box of sheet.shadowRoot!.querySelectorAll<HTMLInputElement>('[type=checkbox]')) box.click();
      await settled(sheet);
      expect(sheet.result).not.to.deep.equal(result);
      form.reset();
      expect(sent(form)).to.deep.equal(value);
      await settled(sheet);
      expect(sheet.result).to.deep.equal(result);
      expect([valueIn(sheet, 'width'), valueIn(sheet, 'shrinkage'), valueIn(sheet, 'price')]).to.deep.equal([
        '58 in',
        '3 %',
        '',
      ]);
    });

    it('a reset puts right what was wrong', async () => {
      const { form, sheet } = await formWith(tag);
      const { result } = sheet;
      await writeAndLeave(sheet, 'width', 'abc');
      form.reset();
      await settled(sheet);
      expect([sheet.result, valueIn(sheet, 'width')]).to.deep.equal([result, '58 in']);
    });
  });

describe('The value', () => {
  // 132 in = 3 2/3 yd, up to each shop's step; 132 in = 335.28 cm, up to 340 cm.
  const cases: [increment: string, value: string][] = [
    ['1/8 yd', '3.75'],
    ['thirds', '3.6667'],
    ['10 cm', '3.4'],
    ['1/2 yd', '4'],
  ];
  for (const [increment, value] of cases)
    it(`is ${value} where the shop cuts by ${increment}`, async () => {
      const { form } = await formWith('quilt-backing', { increment, lang: 'de' });
      expect(sent(form)).to.deep.equal([['amount', value]]);
    });

  it('is there before the form is asked, and new inside the handlers', async () => {
    const { form, sheet } = await formWith('quilt-backing');
    const values: unknown[] = [];
    listen(sheet);
    for (const type of ['input', 'change'])
      form.addEventListener(type, () => values.push(sheet.value, new FormData(form).get('amount')));
    await writeAndLeave(sheet, 'width', '82');
    // Lengthwise: 3 panels of 78 in; crosswise: 2 panels of 90 in = 5 yd, which is less.
    expect(values).to.deep.equal(['5', '5', '5', '5']);
    expect(cell(sheet, 'width').value).to.equal('82 in');
  });
});
