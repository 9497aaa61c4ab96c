import { existsSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { ROOT } from './run.mjs';

/** The result of something that failed as a whole. Its output is above. */
export const FAILED = { passed: 0, skipped: 0, failures: ['see above'] };

export const sumOf = (key, parts) => parts.reduce((total, part) => total + part[key], 0);

/** Adds up the files of a runner. A file that broke outside its tests, or a run that ended badly, counts as one failure. */
export const tally = (ended, files) => {
  const failures = files.flatMap(({ file, isGood, failedTests }) =>
    isGood || failedTests.length > 0 ? failedTests.map((test) => `${file}: ${test}`) : [file],
  );
  return {
    passed: sumOf('passed', files),
    skipped: sumOf('skipped', files),
    failures: ended || failures.length > 0 ? failures : FAILED.failures,
    took: files.flatMap(({ file, took }) => took.map(({ name, ms }) => ({ name: `${file}: ${name}`, ms }))),
  };
};

const read = (path) => (existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined);

/** The files in a Vitest report. */
export const readVitest = (path) =>
  (read(path)?.testResults ?? []).map(({ name, status, assertionResults }) => {
    const those = (...states) => assertionResults.filter((test) => states.includes(test.status));
    return {
      file: relative(ROOT, name),
      isGood: status !== 'failed',
      passed: those('passed').length,
      skipped: those('pending', 'skipped', 'todo', 'disabled').length,
      took: assertionResults.map(({ fullName, duration }) => ({ name: fullName, ms: duration ?? 0 })),
      failedTests: those('failed').map(({ fullName }) => fullName),
    };
  });

/** The files in a report of the browser runner, which tests/config/ writes. Undefined if the run gave no report. */
export const readBrowsers = read;
