import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const litreMinute = 0.001 / 60;

export const fillByStepsCases: readonly SheetCase[] = [
  {
    name: 'a 0.75 L bottle alone on the manifold, one step of 1.616 s: 0.75 L and 27.8 mL of after-run',
    source: {
      title: 'manifold example, independent script and EPANET engine',
      place: 'lane flow 0.4641 L/s',
      mark: 'computed',
    },
    inputs: { durations: [1.616], flows: [0.0004641], flowAtCount: 0.0004641, delay: 0.03, closing: 0.06 },
    outputs: { counted: 0.00075, countTime: 1.616, fillTime: 1.706, afterRun: 0.0000278, filled: 0.0007778 },
    tolerance: { relative: 2e-3, reason: 'three to four printed digits' },
  },
  {
    name: 'twelve, then six, then one lane open at 20.244, 27.116 and 31.466 L/min: 728.483 mL counted',
    source: {
      title: arithmetic.title,
      place: 'from the flows of a lumped manifold of equal valves, printed to five digits',
      mark: 'computed',
    },
    inputs: {
      durations: [1.2, 0.6, 0.1],
      flows: [20.244 * litreMinute, 27.116 * litreMinute, 31.466 * litreMinute],
      flowAtCount: 31.466 * litreMinute,
      delay: 0.03,
      closing: 0.06,
      drip: 1e-6,
    },
    outputs: {
      counted: 0.7284833333e-3,
      countTime: 1.9,
      fillTime: 1.99,
      afterRun: 0.031466e-3,
      filled: 0.7609493333e-3,
    },
    tolerance: { relative: 1e-9, reason: 'ten digits written down' },
  },
  {
    name: 'fast, then slow to the count: the after-run is that of the slow flow',
    source: arithmetic,
    inputs: { durations: [4, 2], flows: [0.0004, 0.0001], flowAtCount: 0.0001, delay: 0.05, closing: 0.1 },
    outputs: { counted: 0.0018, countTime: 6, fillTime: 6.15, afterRun: 0.00001, filled: 0.00181 },
    tolerance: { relative: 1e-12, reason: 'sums of products' },
  },
];
