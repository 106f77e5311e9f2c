import type { SheetCase } from '../sheet-case.ts';

export const giveawayCases: readonly SheetCase[] = [
  {
    name: '1.9 mL a bottle, 6000 an hour, 16 hours on 250 days: 45 600 L a year',
    source: {
      title: 'hand calculation from the definition',
      place: '1.9 x 6000 x 16 x 250 / 1000',
      mark: 'computed',
    },
    inputs: { mean: 501.9e-6, label: 500e-6, rate: 6000 / 3600, dailyTime: 57_600, days: 250 },
    outputs: { perBottle: 1.9e-6, share: 0.0038, perDay: 0.1824, perYear: 45.6 },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
  },
];
