import { expect } from 'chai';
import type { QuiltBacking } from '../../src/elements/backing/backing.js';
import {
  all,
  answer,
  answered,
  at,
  enter,
  find,
  leave,
  listen,
  LONG_LIST,
  looksStale,
  messageAt,
  mount,
  press,
  settled,
  show,
  TAGS,
  unfold,
  until,
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
      const { form } = await formWith('quilt-backing', { increment, lang: 'fr' });
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

describe('A form', () => {
  it('gets what a page set just before it is sent', async () => {
    const { form, sheet } = await formWith('quilt-backing');
    sheet.width = '120';
    expect(sent(form)).to.deep.equal([['amount', sheet.value]]);
    expect(sheet.value).not.to.equal('3.75');
    sheet.width = 'abc';
    expect([form.checkValidity(), sent(form)]).to.deep.equal([false, []]);
  });

  it('gets a finished plan with the event that says so', async () => {
    const form = await show<HTMLFormElement>('<form></form>');
    const sheet = document.createElement('quilt-cutting');
    Object.assign(sheet, { name: 'amount', list: LONG_LIST });
    const planned = new Promise((done) =>
      sheet.addEventListener('change', () => done([sent(form), form.checkValidity()]), { once: true }),
    );
    form.append(sheet);
    expect(await planned).to.deep.equal([[['amount', sheet.value]], true]);
  });

  it('never gets less than is bought', async () => {
    // 120 in = 3 1/3 yd, which has no end as a decimal number.
    const { sheet } = await formWith('quilt-backing', { width: '32', length: '112', increment: 'thirds' });
    expect(answered(sheet).buy.text).to.equal('3 1/3 yd');
    expect(sheet.value).to.equal('3.3334');
  });
});

for (const tag of TAGS)
  describe(`${tag} as a field`, () => {
    it('says what it is, and which form and labels are its own', async () => {
      const form = await show<HTMLFormElement>('<form><label for="amount">Amount</label></form>');
      const sheet = await mount(tag, { name: 'amount', id: 'amount' }, form);
      expect([sheet.type, sheet.form, form.elements.namedItem('amount')]).to.deep.equal([tag, form, sheet]);
      expect([...sheet.labels]).to.deep.equal([form.firstElementChild]);
      expect([sheet.willValidate, sheet.checkValidity(), sheet.validationMessage]).to.deep.equal([
        true,
        true,
        '',
      ]);
    });

    it('does not let a form be sent while an input is wrong, and says the row’s own sentence', async () => {
      const { form, sheet } = await formWith(tag);
      await writeAndLeave(sheet, 'width', 'abc');
      expect(form.checkValidity()).to.equal(false);
      expect([sheet.validity.badInput, sheet.validity.valueMissing]).to.deep.equal([true, false]);
      expect(sheet.validationMessage).to.equal(messageAt(sheet, 'width'));
      await writeAndLeave(sheet, 'width', '58');
      expect([form.checkValidity(), sheet.validity.valid, sheet.validationMessage]).to.deep.equal([
        true,
        true,
        '',
      ]);
    });

    it('points at the cell that is wrong, also where it was folded away', async () => {
      const { form, sheet } = await formWith(tag, { shrinkage: '90' });
      for (const tabindex of ['0', null]) {
        if (tabindex) sheet.setAttribute('tabindex', tabindex);
        else sheet.removeAttribute('tabindex');
        expect(form.reportValidity()).to.equal(false);
        await until(() => at(sheet) === 'shrinkage');
        await leave(sheet);
        await until(() => sheet.getAttribute('tabindex') === tabindex);
      }
    });

    it('lets a form be sent without it where nothing is filled in, unless it is required', async () => {
      const { form, sheet } = await formWith(tag, { width: undefined });
      expect([form.checkValidity(), sent(form)]).to.deep.equal([true, []]);
      sheet.required = true;
      await settled(sheet);
      expect([form.checkValidity(), sheet.validity.valueMissing, sheet.validity.badInput]).to.deep.equal([
        false,
        true,
        false,
      ]);
      expect(sheet.validationMessage).to.match(/^(Quilt|Top) width is missing\. Write it like/);
      form.reportValidity();
      expect(at(sheet)).to.equal('width');
    });

    it('is wrong for a reason of the page’s own, until the page takes it back', async () => {
      const { form, sheet } = await formWith(tag);
      const invalid: string[] = [];
      sheet.addEventListener('invalid', () => invalid.push(sheet.validationMessage));
      sheet.setCustomValidity('We cut this cloth on Mondays only.');
      expect([form.checkValidity(), sheet.validity.customError]).to.deep.equal([false, true]);
      expect(invalid).to.deep.equal(['We cut this cloth on Mondays only.']);
      sheet.setCustomValidity('');
      expect(form.checkValidity()).to.equal(true);
    });

    it('cannot be changed and is not sent while it or its fieldset is disabled', async () => {
      const { form, sheet } = await formWith(tag);
      await unfold(sheet);
      const cells = all(sheet, '[part=cell]').length;
      const fieldset = form.querySelector('fieldset')!;
      for (const [off, on] of [
        [() => (fieldset.disabled = true), () => (fieldset.disabled = false)],
        [() => (sheet.disabled = true), () => (sheet.disabled = false)],
      ] as const) {
        off();
        await settled(sheet);
        expect([sent(form), all(sheet, '[part=cell]').length, sheet.willValidate]).to.deep.equal([
          [],
          0,
          false,
        ]);
        expect(answered(sheet).buy.text).to.be.a('string');
        sheet.width = 'abc';
        await settled(sheet);
        expect(form.checkValidity(), 'a disabled field is not checked').to.equal(true);
        sheet.width = '58';
        on();
        await settled(sheet);
        expect([sent(form).length, all(sheet, '[part=cell]').length]).to.deep.equal([1, cells]);
      }
    });

    it('keeps a cell in its place while it is typed in sign by sign', async () => {
      const { sheet } = await formWith(tag);
      await unfold(sheet);
      await enter(sheet, 'shrinkage');
      cell(sheet, 'shrinkage').select();
      for (const sign of ['1', '2']) {
        document.execCommand('insertText', false, sign);
        await settled(sheet);
        expect(at(sheet)).to.equal('shrinkage');
      }
      expect(sheet.shrinkage).to.equal('12');
      await leave(sheet);
    });

    it('a reset fires nothing, removes measured values, and shows in the cell that the reader is in', async () => {
      const { form, sheet } = await formWith(tag);
      const { result } = sheet;
      const measurable = answered(sheet).working.find(({ role }) => role === 'measurable');
      if (measurable) await writeAndLeave(sheet, measurable.id, '31');
      await write(sheet, 'width', '99');
      const heard = listen(sheet, form);
      form.reset();
      await settled(sheet);
      expect([heard, sheet.measured, valueIn(sheet, 'width')]).to.deep.equal([[], undefined, '58 in']);
      expect(sheet.result).to.deep.equal(result);
      await write(sheet, 'width', '6');
      await write(sheet, 'width', '61');
      expect([valueIn(sheet, 'width'), sheet.width]).to.deep.equal(['61', '61']);
      await press(sheet, 'Escape');
      expect(valueIn(sheet, 'width')).to.equal('58 in');
      await leave(sheet);
    });

    it('a reset keeps what the page set itself', async () => {
      const { form, sheet } = await formWith(tag, { width: undefined });
      sheet.width = 60;
      await settled(sheet);
      await writeAndLeave(sheet, 'width', '99');
      form.reset();
      expect(sheet.width).to.equal(60);
      await writeAndLeave(sheet, 'length', '99');
      sheet.setAttribute('length', '72');
      form.reset();
      expect(sheet.length).to.equal('72');
    });

    it('gets the typed text back from the browser, and a reset then goes back to the start', async () => {
      const { form, sheet } = await formWith(tag);
      const { result } = sheet;
      let state: unknown;
      const { setFormValue } = ElementInternals.prototype;
      ElementInternals.prototype.setFormValue = function (value, kept): void {
        state = kept;
        setFormValue.call(this, value, kept);
      };
      await writeAndLeave(sheet, 'width', '61 1/2');
      const measurable = answered(sheet).working.find(({ role }) => role === 'measurable');
      if (measurable) await writeAndLeave(sheet, measurable.id, '31');
      ElementInternals.prototype.setFormValue = setFormValue;

      const { form: second, sheet: later } = await formWith(tag);
      const heard = listen(later, second);
      later.formStateRestoreCallback(state as string, 'restore');
      expect(sent(second)).to.deep.equal(sent(form));
      await settled(later);
      expect([later.result, heard]).to.deep.equal([sheet.result, []]);
      second.reset();
      await settled(later);
      expect(later.result).to.deep.equal(result);
      later.formStateRestoreCallback('12', 'autocomplete');
      expect(later.result).to.deep.equal(result);
    });
  });

describe('More than the shop has', () => {
  // A 70 × 84 in quilt on 40 in cloth: 92 in by 78 in needs 2 panels of 92 lengthwise: 184 in; up to eighths 5 1/8 yd = 4.6863 m.
  const cases: [max: string, attributes: Record<string, string>, words: string][] = [
    ['5', {}, 'In stock: 5 yd, and this takes 5 1/8 yd.'],
    ['5 yd', {}, 'In stock: 5 yd, and this takes 5 1/8 yd.'],
    ['5 1/8', {}, ''],
    ['184 1/2 in', {}, ''],
    ['184 in', {}, 'In stock: 184 in, and this takes 5 1/8 yd.'],
    ['4.6', { increment: '10 cm' }, 'In stock: 4.6 m, and this takes 4.7 m.'],
    ['4,6', { increment: '10 cm', lang: 'fr' }, 'In stock: 4,6 m, and this takes 4,7 m.'],
    ['4.7 m', { increment: '10 cm' }, ''],
    ['4.7', { increment: '10 cm', units: 'cm', width: '70 in', length: '84 in', overage: '4 in' }, ''],
    ['5.14 yd', { increment: '10 cm' }, ''],
    ['5.13 yd', { increment: '10 cm' }, 'In stock: 5.13 yd, and this takes 4.7 m.'],
    ['plenty', {}, 'Stock, max: “plenty”'],
  ];
  for (const [max, attributes, words] of cases)
    it(`${max}${attributes['increment'] ? ', cut by 10 cm' : ''}: ${words || 'is enough'}`, async () => {
      const { form, sheet } = await formWith('quilt-backing', {
        width: '70',
        length: '84',
        overage: '4',
        ...attributes,
        max,
      });
      expect(answered(sheet).buy.text).to.match(/^5 1\/8 yd$|^4[.,]7 m$/);
      expect([sheet.validity.rangeOverflow, form.checkValidity()]).to.deep.equal([!!words, !words]);
      expect(sheet.validationMessage.startsWith(words)).to.equal(true, sheet.validationMessage);
      expect(answer(sheet))
        .to.contain(`Buy ${answered(sheet).buy.text}`)
        .and.contain(sheet.validationMessage);
      expect(looksStale(find(sheet, 'strong'))).to.equal(false);
      expect(sent(form)).to.deep.equal([['amount', sheet.value]]);
    });

  it('names a layout that would do, where there is one, and points at the first cell', async () => {
    const { form, sheet } = await formWith('quilt-backing', { width: '72', length: '86', max: '6' });
    const { layouts } = answered<{ layouts: { strip?: unknown; buy: { text: string; inches: string } }[] }>(
      sheet,
    );
    const fitting = layouts.find(({ strip, buy }) => strip && Number(buy.inches.split(' ')[0]) < 216)!;
    expect(sheet.validationMessage).to.equal(
      `In stock: 6 yd, and this takes 6 3/4 yd. A pieced strip would do: ${fitting.buy.text}.`,
    );
    form.reportValidity();
    expect(at(sheet)).to.equal('width');
    (sheet as QuiltBacking).piecedStrip = true;
    expect([sheet.validationMessage, sheet.checkValidity()]).to.deep.equal(['', true]);
    (sheet as QuiltBacking).piecedStrip = false;
    sheet.max = 1;
    expect(sheet.validationMessage).to.match(/A smaller size or wider cloth would take less\.$/);
  });

  it('counts what is bought by the piece, of which a length says nothing', async () => {
    const batting = await mount('quilt-batting', { max: '0' });
    expect(batting.validationMessage).to.match(/^In stock: 0, and this takes 1 .*package/);
    for (const max of ['1', '2 yd']) {
      batting.max = max;
      expect(batting.validationMessage).to.equal('');
    }
    const plan = await mount('quilt-cutting', {
      sheet: 'fat-quarter',
      list: 'A\tsquare\t6 1/2 in\t12',
      max: '1',
    });
    expect(answered(plan).buy.unit).to.equal('sheet');
    expect(plan.validationMessage).to.match(/^In stock: 1, and this takes \d fat quarters\./);
    plan.max = answered(plan).buy.amount;
    expect(plan.validationMessage).to.equal('');
  });
});
