import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { fontsTold } from '../tools/fonts.mjs';
import { slimFraction } from '../tools/slim-fraction.mjs';
import { SETUP_LIMIT, TEST_LIMIT } from './limits.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  root,
  // The sources are tested with the fraction.js that the built scripts carry.
  plugins: [slimFraction()],
  test: {
    testTimeout: TEST_LIMIT,
    hookTimeout: SETUP_LIMIT,
    // Vitest would leave one core for itself, which has next to nothing to do.
    maxWorkers: availableParallelism(),
    server: { deps: { inline: ['fraction.js'] } },
    projects: [
      // The files share what they import: no module keeps anything of its callers, but for the languages that `learn` was given.
      { extends: true, test: { name: 'units', include: ['tests/**/*.test.ts'], isolate: false } },
      {
        extends: true,
        test: {
          name: 'pages',
          include: ['tests/pages/**/*.page.ts'],
          globalSetup: ['tests/tools/fresh-dist.mjs'],
          env: fontsTold(),
        },
      },
    ],
  },
});
