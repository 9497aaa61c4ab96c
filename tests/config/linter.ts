import { ESLint } from 'eslint';
import tseslint from 'typescript-eslint';
import { ROOT } from '../tools/run.mjs';

/** The linter as the project has it, but for the rules that ask for types: those of our own do not, and types take it seconds. */
export const projectLinter = (): ESLint =>
  new ESLint({
    cwd: ROOT,
    overrideConfigFile: 'tests/config/eslint.config.mjs',
    overrideConfig: tseslint.configs.disableTypeChecked,
  });
