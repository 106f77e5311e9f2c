import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const deadVolumeCases: readonly SheetCase[] = [
  {
    name: '50 cm3 and 2.0 m of 4 mm tube take 0.4144 L of normal air to 5.516 bar(g): 75.13 cm3',
    source: script,
    inputs: { bore: 0.004, length: 2, clearance: 50e-6 },
    outputs: { volume: 0.4144e-3 / 5.516 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
  },
  {
    name: 'a tube of 1/4 in bore holds 7.069 cubic inches in a length of 12 ft',
    source: { title: 'hand calculation', place: '0.0490874 in2 by 144 in', mark: 'computed' },
    inputs: { bore: 0.25 * 0.0254, length: 144 * 0.0254 },
    outputs: { volume: 7.0686 * 0.0254 ** 3 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: ['DEAD_VOLUME_NO_CLEARANCE'],
  },
];
