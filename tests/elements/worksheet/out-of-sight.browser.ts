import { expect } from 'chai';
import { cell, find, settled, text, until, write } from '../../face/fixture.js';
import { calm, part, worksheet, type Worksheet } from './quilt.js';

const FAR = '<div style="block-size: 4000px"></div>';

/** A quilt whose backing and whose list lie far below the screen. */
const tall = async (): Promise<Worksheet> => {
  const sheet = await worksheet(
    `<quilt-borders width="50" length="60" borders="4"></quilt-borders>${FAR}<quilt-backing></quilt-backing>`,
  );
  scrollTo(0, 0);
  return sheet;
};

const shownWidth = (sheet: Worksheet): string => cell(part(sheet, 'backing'), 'width').value;

/** Types another width, and waits until what is in sight is drawn. Whether the backing is still to be drawn then. */
const waitsAfter = async (sheet: Worksheet, width: string): Promise<boolean> => {
  const borders = part(sheet, 'borders');
  await write(borders, 'width', width);
  return part(sheet, 'backing').isUpdatePending;
};

/** Types until the browser has told that the backing is off the screen, and so it waits. */
const waiting = async (sheet: Worksheet): Promise<number> => {
  let width = 50;
  for (let waits = false; !waits; width += 1) {
    await new Promise(requestAnimationFrame);
    waits = await waitsAfter(sheet, `${width}`);
  }
  return width - 1;
};

describe('What nobody sees', () => {
  it('is reckoned at once, and drawn after the next frame', async () => {
    const sheet = await tall();
    const backing = part(sheet, 'backing');
    const width = await waiting(sheet);
    expect(shownWidth(sheet)).not.to.equal(`${width + 8} in`);
    expect(backing.result.working.find(({ id }) => id === 'width')!.value).to.equal(`${width + 8} in`);
    expect(sheet.result.errors).to.equal(undefined);
    await until(() => shownWidth(sheet) === `${width + 8} in`);
    await until(() => !backing.isUpdatePending && !sheet.isUpdatePending);
    await calm(sheet);
    const { buy } = backing.result as { buy: { text: string } };
    expect(text(find(backing, '[part=amount]'))).to.equal(buy.text);
    expect(text(find(sheet, '[part=table], .answer'))).not.to.equal('');
  });

  it('is drawn at once for those who ask, before printing, and if something else in it changes', async () => {
    const sheet = await tall();
    const backing = part(sheet, 'backing');
    const shows = (width: number): void => {
      expect(shownWidth(sheet)).to.equal(`${width + 8} in`);
    };

    const asked = await waiting(sheet);
    await backing.updateComplete;
    shows(asked);

    const printed = await waiting(sheet);
    dispatchEvent(new Event('beforeprint'));
    shows(printed);
    dispatchEvent(new Event('afterprint'));

    const changed = await waiting(sheet);
    Object.assign(backing, { overage: '6' });
    await Promise.resolve();
    shows(changed);
    await settled(backing);
    expect(cell(backing, 'overage').value).to.equal('6 in');
  });

  it('is in the same state in the end as if all had been in sight', async () => {
    const sheet = await tall();
    await waiting(sheet);
    await write(part(sheet, 'borders'), 'width', '71');
    await calm(sheet);
    const far = JSON.stringify([part(sheet, 'backing').result, sheet.result]);
    const near = await worksheet(
      '<quilt-borders width="71" length="60" borders="4"></quilt-borders><quilt-backing></quilt-backing>',
    );
    expect(far).to.equal(JSON.stringify([part(near, 'backing').result, near.result]));
  });
});
