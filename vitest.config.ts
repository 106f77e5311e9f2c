import { defineConfig } from 'vitest/config';
import { inlinedScript } from './scripts/inlined-script.mjs';

export default defineConfig({
  plugins: [inlinedScript()],
  test: {
    include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    // by itself the runner leaves one of two cores idle
    maxWorkers: 2,
    // what a file imports is pure: a world of its own for each would cost half of the time
    isolate: false,
    setupFiles: ['tests/property-draws.ts'],
    // a test that hangs ends; one on a machine that is busy with something else does not
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
