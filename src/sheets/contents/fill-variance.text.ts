import type { SheetText } from '../sheet-text.ts';

export const fillVarianceText: SheetText = {
  en: {
    title: 'Spread of a fill from its parts',
    about:
      'Standard deviation of a fill from repeat, drift, the whole count and the flow at which the valve closes.',
    inputs: {
      repeat: 'Standard deviation of repeats',
      drift: 'Standard deviation of the drift',
      perCount: 'Volume of one count',
      afterRun: 'After-run',
      flowVariation: 'Standard deviation of the flow over the flow',
      lanes: 'Standard deviation between lanes (under one common preset)',
    },
    outputs: {
      countPart: 'Part of the whole count',
      flowPart: 'Part of the flow',
      spread: 'Standard deviation of a lane',
      spreadOfAll: 'Standard deviation over all lanes',
    },
    notes: {},
  },
};
