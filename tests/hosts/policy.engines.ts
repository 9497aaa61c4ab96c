import { expect } from 'chai';
import { until } from '../until.js';
import { LISTENING, openFrame, type Framed } from './frame.js';
import { pageOf, POLICIES, SHEETS, STRICT } from './hostile-pages.js';
import { keptBy, readingOf, settle, useAll } from './reading.js';
import { calmReading } from './standing.js';

/** The page with this script, under this policy. */
const under = (policy: string, script: string): Promise<Framed> => {
  const html = pageOf(SHEETS, { script: LISTENING + script });
  return openFrame({ src: `/hosts/page?${new URLSearchParams({ html, policy })}` });
};

describe('A strict content security policy', () => {
  for (const [what, content, script] of POLICIES)
    it(`lets ${what} work, and has nothing to report`, async () => {
      const calm = await calmReading(SHEETS);
      const { page, faults } = await under(content, script);
      await settle(page);
      expect(readingOf(page)).to.deep.equal(calm);
      // Not printed: WebKit would wait for somebody to choose a printer.
      await useAll(page, 'Print');
      expect(faults).to.deep.equal([]);
      expect(await keptBy(page)).to.deep.equal({ cookies: '', stored: 0, databases: 0, globals: [] });
    });

  it('is in force: what it forbids is reported', async () => {
    const { page, faults } = await under(STRICT, '');
    page.body.setAttribute('style', 'color: red');
    await until(() => faults.length > 0);
    expect(faults.join()).to.include('style-src');
  });
});
