import type { SheetCase } from '../sheet-case.ts';

export const residualVoltageCases: readonly SheetCase[] = [
  {
    name: 'a filter on 400 V, 565.7 V peak, 1 Mohm and 1 uF: 2.2437 s to 60 V, 3.81 V after 5 s',
    source: {
      title: 'discharge of a capacitor',
      place: 'closed form by hand',
      mark: 'computed',
    },
    inputs: { peak: 565.685, resistance: 1e6, capacitance: 1e-6, allowed: 60 },
    outputs: { time: 2.2437, afterFiveSeconds: 3.8116 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: ['CAUTION_ELECTRICAL', 'RESIDUAL_RULE'],
  },
  {
    name: 'a converter of 650 V, 1 mF and 20 kohm: 47.7 s, far over the 5 s of the rule',
    source: { title: 'discharge of a capacitor', place: 'closed form by hand', mark: 'computed' },
    inputs: { peak: 650, resistance: 20e3, capacitance: 1e-3, allowed: 60 },
    outputs: { time: 47.653 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: ['RESIDUAL_SLOW'],
  },
];
