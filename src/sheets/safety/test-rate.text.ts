import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const testRateText: SheetText = {
  en: {
    title: 'Test of a category 2 control',
    about: 'How often a control of category 2 is tested for each demand, and whether its tester lasts.',
    inputs: {
      demandEvery: 'Time between two demands',
      testEvery: 'Time between two tests',
      logic: 'Mean time to a dangerous failure of the logic',
      tester: 'Mean time to a dangerous failure of the test equipment',
    },
    outputs: {
      tests: 'Tests for each demand',
      longestInterval: 'Longest time between two tests',
      share: 'Tester over logic',
    },
    notes: {
      ...notesOf('CAUTION_GUARDING'),
      TEST_TOO_SELDOM: 'Under a hundred tests for each demand: not what category 2 asks.',
      TESTER_TOO_SHORT: 'The test equipment must last longer than half of the logic.',
    },
  },
};
