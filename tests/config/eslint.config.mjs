import { fileURLToPath } from 'node:url';
import js from '@eslint/js';
import { configs as lit } from 'eslint-plugin-lit';
import { configs as wc } from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';
import { importsRunDownwards } from './layers.mjs';
import { wordsAreNotRead, wordsStandApart } from './words.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default tseslint.config(
  // The sample projects see the packed package alone, and their own builds check them.
  {
    ignores: [
      'dist/',
      'tests/config/headless/',
      'tests/consumers/',
      'node_modules/',
      'demo/**/*.js',
      'tests/hosts/listening.js',
    ],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  {
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'], location: 'anywhere' }],
    },
  },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    rules: {
      '@typescript-eslint/consistent-type-imports': [
        'error',
        { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false },
      ],
      '@typescript-eslint/no-unnecessary-type-assertion': 'error',
      '@typescript-eslint/no-unused-expressions': ['error', { allowShortCircuit: true }],
      // An empty attribute is as good as none, so `||` is right for text.
      '@typescript-eslint/prefer-nullish-coalescing': ['error', { ignorePrimitives: { string: true } }],
      '@typescript-eslint/prefer-optional-chain': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['src/**/*.ts'],
    extends: [lit['flat/recommended'], wc['flat/recommended']],
    plugins: {
      quilt: {
        rules: {
          'imports-run-downwards': importsRunDownwards,
          'words-stand-apart': wordsStandApart,
          'words-are-not-read': wordsAreNotRead,
        },
      },
    },
    rules: {
      'quilt/imports-run-downwards': 'error',
      'quilt/words-stand-apart': 'error',
      'quilt/words-are-not-read': 'error',
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      // chai writes its assertions as properties: expect(x).to.be.true
      '@typescript-eslint/no-unused-expressions': 'off',
      '@typescript-eslint/unbound-method': 'off',
      'no-restricted-syntax': [
        'error',
        {
          selector:
            'MemberExpression[object.name=/^(describe|it|test|suite)$/][property.name=/^(only|skip|todo)$/]',
          message: 'Every test runs.',
        },
      ],
    },
  },
  {
    files: ['**/*.mjs'],
    languageOptions: {
      globals: {
        process: 'readonly',
        console: 'readonly',
        URL: 'readonly',
        Buffer: 'readonly',
        fetch: 'readonly',
        setTimeout: 'readonly',
      },
    },
    rules: { 'no-console': 'off' },
  },
  {
    // What runs in a page.
    files: ['tests/tools/long-lists.mjs'],
    languageOptions: {
      globals: { document: 'readonly', InputEvent: 'readonly', PerformanceObserver: 'readonly' },
    },
  },
);
