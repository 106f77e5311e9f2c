import { defineConfig } from 'vitest/config';

/** Tests that drive a real Chromium against the real server. Two files at a time, each with a browser and servers of its own. */
export default defineConfig({
  test: {
    globalSetup: ['tests/browser/build-once.ts'],
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
  },
});
