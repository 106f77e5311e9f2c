import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const leastPressureCases: readonly SheetCase[] = [
  ...(
    [
      [0.616, 5.516e5],
      [0.821, 4.137e5],
    ] as const
  ).map(([loadRatio, leastPressure]) => ({
    name: `600 N on 50 mm load it to ${loadRatio} at ${leastPressure / 1e5} bar(g)`,
    source: script,
    inputs: { bore: 0.05, rod: 0.02, load: 600, loadRatio },
    outputs: { leastPressure },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['LOAD_RATIO_GUIDE', 'CAUTION_COMPRESSED_AIR'],
  })),
  {
    name: '408.31 N without further friction stall at 2.079 bar(g)',
    source: script,
    inputs: { bore: 0.05, rod: 0.02, load: 408.31, efficiency: 1, loadRatio: 1 },
    outputs: { stallPressure: 2.079e5, leastPressure: 2.079e5 },
    tolerance: { relative: 5e-4, reason: 'four printed digits' },
    notes: ['VALVE_PILOT_PRESSURE'],
  },
];
