import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const pumpAffinityCases: readonly SheetCase[] = [
  {
    name: 'DOE handbook, 1 800 to 3 600 rpm: 400 to 800 US gal/min, 48 ft, 45 kW',
    source: {
      title: 'DOE Fundamentals Handbook, Fluid Flow',
      edition: 'HT-03',
      place: 'p. 50; head and power computed from its laws',
      mark: 'read',
    },
    inputs: { flow: 0.02523607856, head: 14.6304, power: 45000, speedRatio: 2 },
    outputs: { flow: 0.05047215712, head: 58.5216, power: 360000 },
    tolerance: { relative: 1e-9, reason: 'rounding of the unit conversion' },
  },
  {
    name: 'from 50 to 60 Hz: 1.2, 1.44, 1.728',
    source: arithmetic,
    inputs: { flow: 0.001, head: 10, power: 1000, speedRatio: 1.2 },
    outputs: { flow: 0.0012, head: 14.4, power: 1728 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
