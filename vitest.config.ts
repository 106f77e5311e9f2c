import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    // two cores, and property tests that are heavy in one thread
    testTimeout: 30_000,
  },
});
