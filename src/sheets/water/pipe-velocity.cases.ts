import type { SheetCase } from '../sheet-case.ts';
import { epanetEngine } from './sources.ts';

export const pipeVelocityCases: readonly SheetCase[] = [
  {
    name: 'hook-up pipe, 2.5 m3/h in 27.3 mm',
    source: epanetEngine,
    inputs: { flow: 2.5 / 3600, bore: 0.0273 },
    outputs: { velocity: 1.1864 },
    tolerance: { relative: 5e-5, reason: 'printed digits' },
  },
  {
    name: '8 in drain flowing full, 0.854 ft3/s: 2.448 ft/s',
    source: { title: 'public worked sheet for an 8 in pipe flowing full', place: 'result', mark: 'read' },
    inputs: { flow: 0.024182587, bore: 0.2032 },
    outputs: { velocity: 0.74615 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
];
