import { basename } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take a minute and more, the longest first: one that begins last has a core to itself at the end. */
const long = [
  'book-page',
  'main-job',
  'found',
  'accessibility',
  'utilities',
  'first-book',
  'pseudo-language',
  'proof',
  'two-tabs',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = long.indexOf(basename(moduleId, '.test.ts'));
      return at < 0 ? long.length : at;
    };
    return (await super.sort(files)).toSorted((one, other) => place(one) - place(other));
  }
}

/** Tests that drive a real Chromium against the real server. Two files at a time, each with a browser and servers of its own. */
export default defineConfig({
  test: {
    globalSetup: ['tests/browser/build-once.ts'],
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 180_000,
    hookTimeout: 180_000,
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
  },
});
