import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  root,
  test: {
    projects: [
      { extends: true, test: { name: 'units', include: ['tests/**/*.test.ts'] } },
      {
        extends: true,
        test: {
          name: 'pages',
          include: ['tests/pages/**/*.page.ts'],
          globalSetup: ['tests/tools/fresh-dist.mjs'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
