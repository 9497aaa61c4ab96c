import { spawn, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { createServer, connect } from 'node:net';
import { delimiter, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

const runs = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** The first program that runs. A name without a path is looked for on PATH. */
const firstThatRuns = (...names) =>
  names
    .filter(Boolean)
    .flatMap((name) =>
      /[\\/]/.test(name)
        ? [name]
        : (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, name)),
    )
    .find(runs);

const PROGRAM_FILES = process.env.PROGRAMFILES ?? 'C:/Program Files';

/** The shell is Chromium without windows: the same engine, and tests in it take a quarter less. */
export const findChromium = () =>
  firstThatRuns(
    process.env.CHROME_PATH,
    'chromium-headless-shell',
    'chromium',
    'chromium-browser',
    'google-chrome',
    'google-chrome-stable',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    `${PROGRAM_FILES}/Google/Chrome/Application/chrome.exe`,
  );

export const findFirefox = () =>
  firstThatRuns(
    process.env.FIREFOX_PATH,
    'firefox-esr',
    'firefox',
    '/Applications/Firefox.app/Contents/MacOS/firefox',
    `${PROGRAM_FILES}/Mozilla Firefox/firefox.exe`,
  );

/** The folders where Debian keeps shared program files: one for all machines, and one named after the machine. */
const libraries = () => {
  const all = '/usr/lib';
  if (!existsSync(all)) return [];
  return [
    all,
    ...readdirSync(all)
      .filter((name) => name.includes('-linux-'))
      .map((name) => join(all, name)),
  ];
};
const inLibraries = (...names) => names.flatMap((name) => libraries().map((folder) => join(folder, name)));

/** WebKitGTK keeps its small browser out of PATH, in a folder named after the version. */
const findMiniBrowser = () =>
  firstThatRuns(
    ...inLibraries(
      ...['webkitgtk-6.0', 'webkit2gtk-4.1', 'webkit2gtk-4.0'].map((version) => `${version}/MiniBrowser`),
    ),
  );

export const findWebKit = () => {
  const found = {
    driver: firstThatRuns('WebKitWebDriver'),
    screen: firstThatRuns('Xvfb'),
    browser: findMiniBrowser(),
  };
  return Object.values(found).every(Boolean) ? found : undefined;
};

/** Every engine that tests the elements, and its Debian packages. */
export const ENGINES = [
  { name: 'Chromium', find: findChromium, packages: ['chromium-headless-shell'] },
  { name: 'Firefox', find: findFirefox, packages: ['firefox-esr'] },
  { name: 'WebKit', find: findWebKit, packages: ['webkit2gtk-driver', 'xvfb'] },
];

/** A program that prints from WebKit, and the screen that it does so on. */
export const findWebKitPrinter = () => {
  const found = { gjs: firstThatRuns('gjs'), screen: firstThatRuns('Xvfb') };
  const isWebKitThere = inLibraries('girepository-1.0/WebKit2-4.1.typelib').some((path) => existsSync(path));
  return isWebKitThere && Object.values(found).every(Boolean) ? found : undefined;
};

/** The programs that read printed pages. */
export const findPoppler = () =>
  ['pdfinfo', 'pdftotext', 'pdftoppm'].every((name) => firstThatRuns(name)) || undefined;

/** Every program that tests use if it is installed, engines first. */
export const PROGRAMS = [
  ...ENGINES,
  { name: 'WebKit on paper', find: findWebKitPrinter, packages: ['gjs', 'gir1.2-webkit2-4.1', 'xvfb'] },
  { name: 'Poppler, which looks at printed pages', find: findPoppler, packages: ['poppler-utils'] },
];

/** On Debian as root, installs the programs that are missing. Elsewhere, and when that fails, they stay missing. */
export const installMissing = () => {
  const missing = PROGRAMS.filter((program) => !program.find());
  if (missing.length === 0 || !existsSync('/etc/debian_version') || process.getuid?.() !== 0) return;
  const aptGet = (...words) =>
    spawnSync('apt-get', words, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  aptGet('update', '-q');
  for (const { name, packages } of missing) {
    console.log(`Installing ${name} (${packages.join(', ')})`);
    aptGet('install', '-q', '-y', '--no-install-recommends', ...packages);
  }
};

const asRoot = process.getuid?.() === 0;

/** Quiet and offline; the sandbox needs a user other than root. */
export const CHROMIUM_FLAGS = [
  ...(asRoot ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // If a test answers a request itself, Chromium counts the page as public, and a public page may not frame a local one.
  '--disable-features=LocalNetworkAccessChecks',
];

export const freePort = () =>
  new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

const answers = (port) =>
  new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    socket.once('error', () => resolve(false));
    socket.once('connect', () => {
      socket.destroy();
      resolve(true);
    });
  });

/** Starts a program that ends with this process. */
const start = (command, words, options) => {
  const child = spawn(command, words, options);
  child.once('error', (error) => console.error(`${command}: ${error.message}`));
  process.once('exit', () => child.kill());
  // Vitest ends its processes with a signal, and a signal alone fires no exit event.
  process.once('SIGTERM', () => process.exit());
  return child;
};

/** Starts a virtual screen, and gives the environment that makes a program use it. */
export const startScreen = async (screen) => {
  const words = ['-displayfd', '3', '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'];
  const xvfb = start(screen, words, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
  const display = await new Promise((resolve, reject) => {
    xvfb.stdio[3].once('data', (data) => resolve(`:${String(data).trim()}`));
    xvfb.once('exit', () => reject(new Error('Xvfb ended before it had a display')));
  });
  return {
    ...process.env,
    DISPLAY: display,
    WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
    GDK_BACKEND: 'x11',
  };
};

/** The capabilities for WebKit's driver: its small browser, with further arguments. */
export const webKitCapabilities = ({ browser }, args = []) => ({
  browserName: 'MiniBrowser',
  'webkitgtk:browserOptions': { binary: browser, args: ['--automation', ...args] },
});

/** Starts WebKit's driver on a virtual screen. Both end with this process. `env` adds to its environment. */
export const startWebKitDriver = async ({ driver, screen }, env = {}) => {
  const onScreen = await startScreen(screen);
  const port = await freePort();
  start(driver, [`--port=${port}`], { stdio: 'ignore', env: { ...onScreen, ...env } });
  for (let tries = 0; tries < 600; tries++) {
    if (await answers(port)) return port;
    await pause(100);
  }
  throw new Error(`WebKitWebDriver does not answer at port ${port}`);
};
