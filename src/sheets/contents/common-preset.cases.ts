import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';

export const commonPresetCases: readonly SheetCase[] = [
  {
    name: 'three lanes that want 1013, 1011 and 1022: 3.31 mL a bottle for one preset',
    source: statisticsScript,
    inputs: {
      afterRuns: [6.2e-6, 5.1e-6, 7e-6],
      perCounts: [0.495e-6, 0.497e-6, 0.491e-6],
      fillSpreads: [1.4e-6, 1.2e-6, 1.9e-6],
      capacity: 503e-6,
      capacitySpread: 1.1e-6,
    },
    outputs: {
      presets: [1013, 1011, 1022],
      common: 1022,
      prices: [4.455e-6, 5.467e-6, 0],
      price: 3.30733333333e-6,
    },
    tolerance: { relative: 1e-9, absolute: 1e-16, reason: 'printed digits' },
  },
];
