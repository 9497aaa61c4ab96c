import { launch } from 'puppeteer-core';
import { CHROMIUM_FLAGS, findChromium, findFirefox } from './browsers.mjs';

/** Starts Chromium without a window. */
export const launchChromium = () => {
  const executablePath = findChromium();
  if (!executablePath)
    throw new Error('There is no Chromium or Chrome here; CHROME_PATH may say where one is.');
  return launch({ executablePath, args: CHROMIUM_FLAGS });
};

/** Starts Firefox without a window, where there is one. */
export const launchFirefox = () => launch({ browser: 'firefox', executablePath: findFirefox() });
