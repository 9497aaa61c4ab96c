import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { until } from '../until.js';
import { openFrame } from './frame.js';

/** The pages that other people's projects build, each from the packed package. */
const PAGES = {
  'scripts copied beside a page': 'html/index.html',
  'modules by an import map': 'html/import-map.html',
  React: 'react/index.html',
  Vue: 'vue/index.html',
  'a static site': 'site/index.html',
};

describe('Built from the packed package', () => {
  before(async function () {
    // The projects build themselves when they are first asked for, which is no test yet.
    this.timeout(900_000);
    for (const path of Object.values(PAGES)) await fetch(`/hosts/consumers/${path}`);
  });

  for (const [what, path] of Object.entries(PAGES))
    it(`${what}: the element follows the page, and the page hears the element`, async () => {
      const { page, faults } = await openFrame({ src: `/hosts/consumers/${path}` });
      await until(() => !!page.querySelector('quilt-backing:defined'));
      const backing = page.querySelector('quilt-backing')!;
      const said = (id: string): string => page.querySelector(`#${id}`)!.textContent;
      const bought = (): string | undefined => backing.result.buy?.text;
      // geometry: 66 × 78 in on 40 in cloth is two panels of 66 in across, 132 in
      expect(bought()).to.equal('3 3/4 yd');

      page.querySelector<HTMLElement>('#wider')!.click();
      await until(() => `${backing.width}` === '80');
      // geometry: 88 × 78 in is two of 88 in across, 176 in
      expect(bought()).to.equal('5 yd');
      await backing.updateComplete;
      expect(backing.shadowRoot!.querySelector('strong')!.textContent).to.match(/\b5\syd$/);

      const cell = backing.shadowRoot!.querySelector<HTMLInputElement>('#length')!;
      cell.focus();
      cell.select();
      // No digit twice: WebKit's driver loses the second.
      await sendKeys({ type: '102' });
      // geometry: 88 × 110 in is three of 88 in across, 264 in
      expect(bought()).to.equal('7 3/8 yd');
      await until(() => said('typed') === '7 3/8 yd');
      expect(said('left')).to.equal('');
      await sendKeys({ press: 'Tab' });
      await until(() => said('left') !== '');
      expect(said('left')).to.equal('7.375');
      expect(faults).to.deep.equal([]);
    });
});
