import { expect } from 'chai';
import { once } from '../tools/once.mjs';
import { findingsIn, LISTENING, openFrame } from './frame.js';
import { pageOf, SCRIPT, SHEETS, type Hostile } from './hostile-pages.js';
import { misfits, readingOf, settle, type Reading } from './reading.js';

/** What is read on the calm page, which stands only while it is read; once for all tests of a file. */
export const calmReading = once(async (body: string): Promise<Reading> => {
  const { page, window } = await openFrame({ srcdoc: pageOf(body) });
  await settle(page);
  const reading = readingOf(page);
  window.frameElement!.remove();
  return reading;
});

/**
 * What is read on a page of this kind, which has nothing cut off on it, and nothing to report; nothing faint either, where that
 * is looked at.
 */
export const standing = async (
  { css, html, body = SHEETS, then }: Hostile,
  width: number,
  looksAtContrast = false,
): Promise<Reading> => {
  const srcdoc = pageOf(body, {
    ...(css && { css }),
    ...(html && { html }),
    script: LISTENING + SCRIPT,
  });
  const framed = await openFrame({ srcdoc }, { width });
  const { page, faults } = framed;
  then?.(page);
  await settle(page);
  expect(misfits(page)).to.deep.equal([]);
  if (looksAtContrast) expect(await findingsIn(framed, { rules: ['color-contrast'] })).to.deep.equal([]);
  expect(faults).to.deep.equal([]);
  const reading = readingOf(page);
  expect(reading.words.length).to.be.greaterThan(200);
  return reading;
};
