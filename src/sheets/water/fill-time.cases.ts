import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const fillTimeCases: readonly SheetCase[] = [
  {
    name: '2 L, the last 0.2 L at a quarter of 0.4 L/s, 0.1 s: 6.6 s',
    source: arithmetic,
    inputs: { volume: 0.002, slowVolume: 0.0002, fastFlow: 0.0004, slowFlow: 0.0001, delay: 0.1 },
    outputs: { fillTime: 6.6 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
