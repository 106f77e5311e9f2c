import type { SheetText } from '../sheet-text.ts';

export const meanOfRunText: SheetText = {
  en: {
    title: 'Mean rate of a run',
    about: 'Bottles over the whole time in which they came, with every stop in it.',
    inputs: { bottles: 'Bottles that came out', duration: 'Duration of the run' },
    outputs: { rate: 'Mean rate' },
    notes: {
      RUN_FEW_BOTTLES: 'Bottles counted: {bottles}. One more or less moves the mean by over a percent.',
    },
  },
};
