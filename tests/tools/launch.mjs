import { launch } from 'puppeteer-core';
import {
  CHROMIUM_FLAGS,
  findChromium,
  findFirefox,
  findWebKit,
  startWebKitDriver,
  webKitCapabilities,
} from './browsers.mjs';

/** Starts Chromium without a window. */
export const launchChromium = () => {
  const executablePath = findChromium();
  if (!executablePath)
    throw new Error('There is no Chromium or Chrome here; CHROME_PATH may say where one is.');
  return launch({ executablePath, args: CHROMIUM_FLAGS });
};

/** Starts Firefox without a window, if it is installed. */
export const launchFirefox = () => launch({ browser: 'firefox', executablePath: findFirefox() });

/** Starts a WebKit with these settings, and gives functions that drive its page. */
export const launchWebKit = async (told = []) => {
  const found = findWebKit();
  const sessions = `http://127.0.0.1:${await startWebKitDriver(found)}/session`;
  const ask = async (method, path, body) => {
    const response = await fetch(sessions + path, { method, ...(body && { body: JSON.stringify(body) }) });
    const { value } = await response.json();
    if (!response.ok) throw new Error(`${path}: ${value.message}`);
    return value;
  };
  const { sessionId } = await ask('POST', '', {
    capabilities: { alwaysMatch: webKitCapabilities(found, told) },
  });
  const post = (what, body = {}) => ask('POST', `/${sessionId}/${what}`, body);
  return {
    goTo: (url) => post('url', { url }),
    goBack: () => post('back'),
    /**
     * Runs a function in the page.
     * @template Result
     * @template {unknown[]} Given
     * @param {(...given: Given) => Result} script
     * @param {Given} args
     * @returns {Promise<Result>}
     */
    evaluate: (script, ...args) => post('execute/sync', { script: `return (${script})(...arguments)`, args }),
    /** Presses these keys, one after another, at the focus. */
    type: (keys) =>
      post('actions', {
        actions: [
          {
            type: 'key',
            id: 'keys',
            actions: [...keys].flatMap((value) => ['keyDown', 'keyUp'].map((type) => ({ type, value }))),
          },
        ],
      }),
    close: () => ask('DELETE', `/${sessionId}`),
  };
};
