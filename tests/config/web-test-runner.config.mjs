import { readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defaultReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { webdriverLauncher } from '@web/test-runner-webdriver';
import {
  CHROMIUM_FLAGS,
  findChromium,
  findFirefox,
  findWebKit,
  startWebKitDriver,
  webKitCapabilities,
} from '../tools/browsers.mjs';
import { bundledSources } from '../tools/bundled-sources.mjs';
import { fontsTold } from '../tools/fonts.mjs';
import buildIfStale from '../tools/fresh-dist.mjs';
import { consumersServed, hosts } from '../tools/hosts.mjs';
import { sourceOf, toJavaScript } from '../tools/typescript.mjs';
import { TEST_LIMIT } from './limits.mjs';

Object.assign(process.env, fontsTold());

const rootDir = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');

const chromium = (executablePath) => {
  const launcher = chromeLauncher({ launchOptions: { executablePath, args: CHROMIUM_FLAGS } });
  launcher.name = 'Chromium';
  return launcher;
};

const firefox = (executablePath, told = {}) => {
  // Its panel of downloads would take the focus, and every later test of the keyboard would go without.
  const extraPrefsFirefox = { 'browser.download.alwaysOpenPanel': false, ...told };
  const launcher = chromeLauncher({
    launchOptions: { browser: 'firefox', executablePath, extraPrefsFirefox },
  });
  launcher.name = 'Firefox';
  return launcher;
};

const webkit = async (found, told = {}) => {
  const launcher = webdriverLauncher({
    hostname: '127.0.0.1',
    port: await startWebKitDriver(found, told),
    path: '/',
    capabilities: { 'wdio:enforceWebDriverClassic': true, ...webKitCapabilities(found) },
  });
  const initialize = launcher.initialize.bind(launcher);
  launcher.initialize = async (config) => {
    await initialize(config);
    launcher.name = 'WebKit';
  };
  return launcher;
};

const wanted = process.env.ENGINES?.toLowerCase().split(',');
/** Those of these engines that are here and wanted, Chromium first; each may be told to be something. */
const launchers = (told) =>
  Promise.all(
    [
      ['chromium', chromium, findChromium()],
      ['firefox', firefox, findFirefox()],
      ['webkit', webkit, findWebKit()],
    ]
      .filter(([name, , found]) => found && (!wanted || wanted.includes(name)) && (!told || told[name]))
      .map(([name, launch, found]) => launch(found, told?.[name])),
  );

/** What a reader may have told her browser; pages/hostile.page.ts does the same for Chromium. */
const TOLD = {
  dark: {
    firefox: { 'layout.css.prefers-color-scheme.content-override': 0 },
    webkit: { GTK_THEME: 'Adwaita:dark' },
  },
  forced: { firefox: { 'browser.display.document_color_use': 2 } },
};
/** Files that are asked for run alone, in every engine that is wanted. */
const areNamed = process.argv.includes('--files');
/** Whether one that is named opens what is built, as it ships; a pattern may mean any. */
const needsDist = (word) =>
  word.includes('*') ||
  (word.endsWith('.ts') && /\/dist\/|\bhosts\//.test(word + readFileSync(word, 'utf8')));
if (!areNamed || process.argv.some(needsDist)) await buildIfStale();

const engines = await launchers();
/** What does not depend on the engine runs in one. */
const inChromium = areNamed ? engines : await launchers({ chromium: {} });
const others = engines.filter(({ name }) => name !== 'Chromium');
const groups = areNamed
  ? []
  : [
      { name: 'engines', files: `${rootDir}/tests/**/*.engines.ts`, browsers: engines },
      { name: 'others', files: `${rootDir}/tests/**/*.others.ts`, browsers: others },
      ...(await Promise.all(
        Object.entries(TOLD).map(async ([name, told]) => ({
          name,
          files: `${rootDir}/tests/**/*.${name}.ts`,
          browsers: await launchers(told),
        })),
      )),
    ];

/** Serves the TypeScript of tests as JavaScript, and finds the `.ts` that an import written with `.js` means. */
const typescript = {
  name: 'typescript',
  resolveMimeType: ({ path }) => (path.endsWith('.ts') ? 'js' : undefined),
  resolveImport: ({ source, context }) => {
    if (!source.startsWith('.') || !context.path.endsWith('.ts')) return undefined;
    const path = new URL(source, `file://${rootDir}${context.path}`).pathname;
    return sourceOf(path) && source.replace(/\.js$/, '.ts');
  },
  transform: ({ path, body }) => {
    if (path.endsWith('.ts') && !path.startsWith('/src/'))
      return { body: toJavaScript(String(body), path, { inlineMap: true }) };
    // Its last line has no end, and the server would join the next to it.
    return path.endsWith('write-excel-file/universal/index.js') ? { body: `${body}\n` } : undefined;
  },
};

/** Where RESULTS names a file, writes there what each file came to in each browser, for the summary of `npm test`. */
const resultsReporter = {
  onTestRunFinished({ sessions }) {
    if (!process.env.RESULTS) return;
    const testsIn = (suite, names) => [
      ...suite.tests.map((test) => ({ ...test, name: [...names, test.name].join(' ') })),
      ...suite.suites.flatMap((inner) => testsIn(inner, [...names, inner.name])),
    ];
    const results = sessions.map(({ browser, testFile, testResults, passed }) => {
      const tests = testResults ? testsIn(testResults, []) : [];
      return {
        file: `${browser.name}, ${relative(rootDir, testFile)}`,
        isGood: passed,
        passed: tests.filter((test) => test.passed).length,
        skipped: tests.filter((test) => test.skipped).length,
        took: tests.map(({ name, duration = 0 }) => ({ name, ms: duration })),
        failedTests: tests.filter((test) => !test.passed && !test.skipped).map(({ name }) => name),
      };
    });
    writeFileSync(process.env.RESULTS, JSON.stringify(results));
  },
};

/** @type {import('@web/test-runner').TestRunnerConfig} */
export default {
  rootDir,
  files: inChromium.length > 0 ? `${rootDir}/tests/**/*.browser.ts` : [],
  nodeResolve: true,
  plugins: [typescript, bundledSources(), hosts()],
  middleware: [consumersServed()],
  browsers: inChromium,
  groups: groups.filter(({ browsers }) => browsers.length > 0),
  // One page at a time in a browser, so that focus is where a test put it. Three browsers at once keep two cores busy.
  concurrency: 1,
  concurrentBrowsers: 3,
  // A file with all its tests; what hangs is a test, which has a limit of its own.
  testsFinishTimeout: 1_800_000,
  testFramework: { config: { timeout: TEST_LIMIT } },
  filterBrowserLogs: ({ args }) => !String(args[0]).includes('Lit is in dev mode'),
  reporters: [defaultReporter(), resultsReporter],
};
