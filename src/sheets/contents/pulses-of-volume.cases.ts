import type { SheetCase } from '../sheet-case.ts';
import { meterResolution } from './pulse-sources.ts';

export const pulsesOfVolumeCases: readonly SheetCase[] = [
  {
    name: 'Comstock 1993, abstract: of 10 000 pulses one is one part in ten thousand',
    source: meterResolution,
    inputs: { pulses: 1e6, volume: 0.01, meterClass: 0 },
    outputs: { lowest: 999_900, highest: 1_000_100 },
    tolerance: { relative: 1e-12, reason: 'double precision' },
  },
];
