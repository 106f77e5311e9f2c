import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, closedForms } from './sources.ts';

export const tankDumpCases: readonly SheetCase[] = [
  {
    name: '0.8 m tank, 25 mm hole, from 1.0 to 0.2 m of head: 412.3 s',
    source: closedForms,
    inputs: { volume: 0.16 * Math.PI * 0.8, depth: 0.8, drop: 0.2, outlet: 0.025, drainBore: 0.1 },
    outputs: { time: 412.3 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
    notes: ['DUMP_AUTHORITY'],
  },
  {
    name: 'the same: 0.62 of the hole at 4.4287 m/s, 1.348 L/s at first; with 0.1 L/s running 1.448',
    source: arithmetic,
    inputs: {
      volume: 0.16 * Math.PI * 0.8,
      depth: 0.8,
      drop: 0.2,
      outlet: 0.025,
      running: 1e-4,
      betweenDumps: 14_400,
      drainBore: 0.1,
    },
    outputs: { dumpFlow: 1.34785e-3, peak: 1.44785e-3, mean: 1.27925e-4 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: ['DUMP_MEAN_HIDES'],
  },
  {
    name: '8 in full at 0.5 %, n 0.013: 24.18 L/s; a 150 mm outlet under 0.6 m gives 37.6, half as much again',
    source: {
      title: 'public worked sheet for an 8 in pipe flowing full',
      place: 'result; outlet by hand',
      mark: 'read',
    },
    inputs: { volume: 1, depth: 0.6, outlet: 0.15, drainBore: 0.2032, slope: 0.005, filling: 1 },
    outputs: { drainCapacity: 0.024182587, drainShare: 1.5542 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['DUMP_DRAIN_SHORT'],
  },
];
