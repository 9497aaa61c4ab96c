import { readFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';
import { axeFindings } from '../hosts/reading.js';
import { ROOT } from '../tools/run.mjs';

const AXE = readFileSync(`${ROOT}node_modules/axe-core/axe.min.js`, 'utf8');

/** What axe finds on a whole page: a line for each. */
export const findingsOn = async (
  page: Page,
  wishes: Parameters<typeof axeFindings>[1] = {},
): Promise<string[]> => {
  await page.evaluate(AXE);
  return page.evaluate(axeFindings, undefined, wishes);
};

/** Text with too little contrast to its background. */
export const faint = (page: Page, least?: number): Promise<string[]> =>
  findingsOn(page, { rules: ['color-contrast'], ...(least && { least }) });
