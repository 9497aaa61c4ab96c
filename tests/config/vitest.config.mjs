import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { fontsTold } from '../tools/fonts.mjs';
import { slimFraction } from '../tools/slim-fraction.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  root,
  // The sources are tested with the fraction.js that the built scripts carry.
  plugins: [slimFraction()],
  test: {
    // These end what hangs; they are no judges of speed, and a busy machine takes its time.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    server: { deps: { inline: ['fraction.js'] } },
    projects: [
      { extends: true, test: { name: 'units', include: ['tests/**/*.test.ts'] } },
      {
        extends: true,
        test: {
          name: 'pages',
          include: ['tests/pages/**/*.page.ts'],
          globalSetup: ['tests/tools/fresh-dist.mjs'],
          fileParallelism: false,
          env: fontsTold(),
        },
      },
    ],
  },
});
