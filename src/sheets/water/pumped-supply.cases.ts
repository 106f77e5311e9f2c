import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, epanetManual } from './sources.ts';

export const pumpedSupplyCases: readonly SheetCase[] = [
  {
    name: 'three-point pump at 60 Hz: 31.66 m at 3.663 L/s',
    source: { title: 'power function and affinity laws', place: 'independent script', mark: 'computed' },
    inputs: {
      flows: [0, 0.002, 0.004],
      heads: [32, 28, 14],
      ratedFrequency: 50,
      frequency: 60,
      density: 1000,
      flow: 0.003663,
    },
    outputs: { speedRatio: 1.2, head: 31.66, pressure: 31.66 * 9806.65, residual: 0 },
    tolerance: { relative: 3e-4, absolute: 1e-9, reason: 'four printed digits' },
  },
  {
    name: 'the same behind a regulator set to 2 bar',
    source: arithmetic,
    inputs: {
      flows: [0, 0.002, 0.004],
      heads: [32, 28, 14],
      ratedFrequency: 50,
      frequency: 60,
      regulatorPressure: 200000,
      density: 1000,
      flow: 0.003663,
    },
    outputs: { pressure: 200000 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
    notes: ['PUMP_REGULATED'],
  },
  {
    name: 'one duty point 24 m at 3 L/s: 17.78 m at 4 L/s',
    source: epanetManual,
    inputs: {
      flows: [0.003],
      heads: [24],
      ratedFrequency: 50,
      frequency: 50,
      suctionHeight: 1,
      density: 1000,
      flow: 0.004,
    },
    outputs: { head: 17.7778, pressure: 18.7778 * 9806.65 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
];
