import { defineConfig } from 'vitest/config';

/** Tests that drive a real Chromium against the real server. One file at a time: two cores carry one browser. */
export default defineConfig({
  test: {
    globalSetup: ['tests/browser/build-once.ts'],
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    fileParallelism: false,
  },
});
