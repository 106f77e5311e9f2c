import type { SheetText } from '../sheet-text.ts';

export const hazenWilliamsText: SheetText = {
  en: {
    title: 'Loss in a town main (Hazen-Williams)',
    about: 'Head lost in a long water main by the formula of US practice. For water near 15 °C only.',
    inputs: { flow: 'Flow', bore: 'Bore', length: 'Length', factor: 'Hazen-Williams C', density: 'Density' },
    outputs: { velocity: 'Velocity', headLoss: 'Loss as head', loss: 'Loss' },
    notes: {
      HAZEN_FAST: 'Over 3 m/s: outside what the formula was measured for.',
      HAZEN_SMALL_BORE: 'Under 50 mm bore: outside what the formula was measured for.',
    },
  },
};
