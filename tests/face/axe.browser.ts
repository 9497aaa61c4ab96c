import { expect } from 'chai';
import {
  answered,
  enter,
  find,
  mount,
  settled,
  TAGS,
  unfold,
  write,
  writeAndLeave,
  type Sheet,
} from './fixture.js';
import { findings } from './findings.js';

/** The states a reader sees a sheet in; all are tried on a light page. */
const STATES: [what: string, come: (sheet: Sheet) => Promise<void>][] = [
  ['fresh', settled],
  ['with its refinements open', unfold],
  ['while a cell is typed in', (sheet) => enter(sheet, 'width')],
  [
    'while a reckoned row has the focus',
    (sheet) => enter(sheet, answered(sheet).working.find(({ role }) => role === 'reckoned')!.id),
  ],
  [
    'with errors in two rows, and the last good answer stale',
    async (sheet) => {
      await unfold(sheet);
      await writeAndLeave(sheet, 'width', 'abc');
      await writeAndLeave(sheet, 'shrinkage', '100 %');
    },
  ],
  ['with an empty cell', (sheet) => write(sheet, 'width', '')],
  [
    'with a row typed over',
    async (sheet) => {
      sheet.shrinkage = '3';
      // Batting has such a row only for a bed.
      if (sheet.localName === 'quilt-batting') sheet.setAttribute('bed', 'queen');
      await settled(sheet);
      await writeAndLeave(sheet, answered(sheet).working.find(({ role }) => role === 'measurable')!.id, '39');
    },
  ],
  [
    'with everything locked',
    (sheet) => {
      sheet.lock = 'width length fabric-width overage seam';
      return settled(sheet);
    },
  ],
  [
    'with nothing given',
    (sheet) => {
      for (const name of ['width', 'length', 'borders']) sheet.removeAttribute(name);
      return settled(sheet);
    },
  ],
];

const LIGHT = 'color: #222; background: #fff';
const PAGES: [where: string, style: string, states: typeof STATES][] = [
  ['a light page', LIGHT, STATES],
  ...(
    [
      ['a dark page', 'color: #e8e4da; background: #1b1d22; color-scheme: dark'],
      ['a narrow column', `${LIGHT}; width: 320px`],
    ] as const
  ).map(
    ([where, style]) =>
      [where, style, STATES.filter(([what]) => /fresh|errors|typed over/.test(what))] as [
        string,
        string,
        typeof STATES,
      ],
  ),
];

for (const tag of TAGS)
  for (const [where, style, states] of PAGES)
    describe(`axe on ${tag}, on ${where}`, () => {
      for (const [what, come] of states)
        it(`finds nothing ${what}`, async () => {
          const sheet = await mount(tag);
          const page = sheet.parentElement!;
          page.style.cssText = style;
          await come(sheet);
          expect(await findings(page)).to.deep.equal([]);
        });
    });

it('axe does look into the sheet', async () => {
  const sheet = await mount('quilt-backing');
  find(sheet, 'label')!.remove();
  expect((await findings(sheet)).join()).to.include('label');
});
