import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';

/** Where people can look at the pages: a picture of each is written into this folder, if there is one. */
const PICTURES = process.env['PICTURES'];
if (PICTURES) mkdirSync(PICTURES, { recursive: true });

/** Writes it there. */
export const picture = async (page: Page, name: string): Promise<void> => {
  if (PICTURES)
    await page.screenshot({ path: join(PICTURES, `${name.replace(/\W+/g, '-')}.png`), fullPage: true });
};
