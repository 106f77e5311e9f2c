import type { SheetCase } from '../sheet-case.ts';

export const laneDoseCases: readonly SheetCase[] = [
  {
    name: 'count preset example: 965 pulses of 0.5 mL at 250 mL/s',
    source: {
      title: 'exact arithmetic, spread by Monte-Carlo',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: {
      pulses: 965,
      pulseDensity: 2e6,
      flow: 0.00025,
      delay: 0.04,
      closing: 0.06,
      phase: 'free-running',
    },
    outputs: { counted: 0.0004825, afterRun: 17.5e-6, bias: -0.25e-6, volume: 0.00049975, spread: 0.144e-6 },
    tolerance: { relative: 3e-3, reason: 'three printed digits of the spread' },
    notes: ['DOSE_FEW_COUNTS'],
  },
  {
    name: 'a scan of 10 ms alone: standard deviation 0.722 mL, half a scan more flow',
    source: {
      title: 'exact arithmetic, spread by Monte-Carlo',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: {
      pulses: 965,
      pulseDensity: 2e6,
      flow: 0.00025,
      delay: 0.04,
      closing: 0.06,
      scan: 0.01,
      phase: 'reset',
    },
    outputs: { afterRun: 18.75e-6, bias: 0, spread: 0.722e-6 },
    tolerance: { relative: 1e-3, absolute: 1e-15, reason: 'three printed digits' },
  },
  {
    name: 'flow drifted to 375 mL/s at the end: 8.75 mL more',
    source: { title: 'exact arithmetic', place: 'independent script', mark: 'computed' },
    inputs: { pulses: 965, pulseDensity: 2e6, flow: 0.000375, delay: 0.04, closing: 0.06, phase: 'reset' },
    outputs: { afterRun: 26.25e-6, volume: 0.00050875 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
