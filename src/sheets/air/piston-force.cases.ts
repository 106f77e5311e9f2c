import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const inputs = { pressure: 5.516e5, bore: 0.05, rod: 0.02, load: 600 };

export const pistonForceCases: readonly SheetCase[] = [
  {
    name: 'a bore of 1.5 in at 80 psi: 141 lbf',
    source: {
      title: 'Few guidelines for figuring pneumatic actuator load requirements, trade magazine',
      place: 'worked example',
      mark: 'read',
    },
    inputs: { pressure: 80 * 6894.757293, bore: 0.0381, load: 0 },
    outputs: { force: 141 * 4.4482216 },
    tolerance: { relative: 5e-3, reason: 'three printed digits' },
    notes: ['PISTON_LOWEST_PRESSURE', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: '50 mm at 5.516 bar(g) extends with 1083.1 N; 600 N load it to 0.616',
    source: script,
    inputs,
    outputs: { force: 1083.1, usableForce: 0.9 * 1083.1, loadRatio: 0.616 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['LOAD_RATIO_HIGH', 'CYLINDER_FRICTION_SHARE'],
  },
  {
    name: 'with a rod of 20 mm it retracts with 909.8 N',
    source: script,
    inputs: { ...inputs, direction: 'retract' },
    outputs: { force: 909.8 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
  {
    name: 'at 4.137 bar(g) the load ratio is 0.821',
    source: script,
    inputs: { ...inputs, pressure: 4.137e5 },
    outputs: { loadRatio: 0.821 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
  {
    name: '408.31 N without further friction stall at 2.079 bar(g)',
    source: script,
    inputs: { ...inputs, load: 408.31, efficiency: 1 },
    outputs: { stallPressure: 2.079e5 },
    tolerance: { relative: 5e-4, reason: 'four printed digits' },
  },
];
