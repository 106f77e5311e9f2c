import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const countPresetCases: readonly SheetCase[] = [
  {
    name: 'count preset example: 500 mL with 17.5 mL after-run at 2 pulses/mL',
    source: { title: 'exact arithmetic', place: 'independent script', mark: 'computed' },
    inputs: { target: 0.0005, afterRun: 17.5e-6, pulseDensity: 2e6, phase: 'reset' },
    outputs: { pulses: 965, volume: 0.0005, rounding: 0 },
    tolerance: { relative: 1e-12, absolute: 1e-15, reason: 'rounding of doubles' },
  },
  {
    name: 'a preset falls between two counts: 0.2 of a count is left over',
    source: arithmetic,
    inputs: { target: 0.0005001, afterRun: 17.5e-6, pulseDensity: 2e6, phase: 'reset' },
    outputs: { pulses: 965, volume: 0.0005, rounding: -1e-7 },
    tolerance: { relative: 1e-8, reason: 'rounding of doubles, cancelled' },
  },
];
