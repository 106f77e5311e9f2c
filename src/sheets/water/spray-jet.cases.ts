import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const sprayJetCases: readonly SheetCase[] = [
  {
    name: '10 L/min at 2 bar: 20.0 m/s, 3.33 N',
    source: arithmetic,
    inputs: { flow: 1e-2 / 60, pressure: 2e5 },
    outputs: { velocity: 20, impact: 3.3333 },
    tolerance: { relative: 1e-4, reason: 'four digits' },
    notes: ['SPRAY_JET_NOT_AT_PUMP'],
  },
  {
    name: 'US form 0.0526 gpm sqrt(psi): 3 gpm at 40 psi press with 0.998 lbf',
    source: {
      title: 'US nozzle trade, total impact 0.0526 gpm sqrt(psi) lbf',
      place: 'formula read',
      mark: 'read',
    },
    inputs: { flow: 3 * 6.30902e-5, pressure: 40 * 6894.757, density: 998.2 },
    outputs: { impact: 0.0526 * 3 * Math.sqrt(40) * 4.448222 },
    tolerance: { relative: 3e-3, reason: 'three printed digits of the factor' },
  },
];
