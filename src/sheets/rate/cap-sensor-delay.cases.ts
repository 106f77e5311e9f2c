import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const capSensorDelayCases: readonly SheetCase[] = [
  {
    name: 'caps of 39 mm at 0.3 m/s cover the sensor for 0.13 s',
    source: arithmetic,
    inputs: { pitch: 0.039, speed: 0.3 },
    outputs: { delay: 0.13 },
    tolerance: { relative: 1e-12, reason: 'one division' },
    notes: ['CAP_DELAY_LEAST'],
  },
];
