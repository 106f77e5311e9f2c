import type { SheetCase } from '../sheet-case.ts';
import { machineExample, switchgearAppendix } from './sources.ts';

export const loadCurrentCases: readonly SheetCase[] = [
  {
    name: 'heater of 9 kW at 208 V: 24.98 A a line',
    source: machineExample,
    inputs: { power: 9000, voltage: 208, phases: 'three-phase', powerFactor: 1 },
    outputs: { current: 24.98, apparentPower: 9000 },
    tolerance: { absolute: 0.005, reason: 'printed to a hundredth' },
    notes: ['CAUTION_ELECTRICAL', 'LOAD_BALANCED'],
  },
  ...(
    [
      [1.5, 0.81, 0.74, 3.6],
      [5.5, 0.82, 0.86, 11.3],
      [15, 0.84, 0.88, 29.3],
    ] as const
  ).map(([shaft, powerFactor, efficiency, current]) => ({
    name: `handbook table at 400 V: a motor of ${shaft} kW draws ${shaft}/${efficiency} kW and ${current} A`,
    source: switchgearAppendix,
    inputs: { power: (1000 * shaft) / efficiency, voltage: 400, powerFactor },
    outputs: { current },
    tolerance: { relative: 1e-2, reason: 'printed to a tenth of an ampere' },
  })),
  {
    name: '2.3 kVA at 0.8 on a single phase of 230 V: 10 A',
    source: { title: 'hand calculation from the definition', place: '2300/230', mark: 'computed' },
    inputs: { power: 1840, voltage: 230, phases: 'single-phase', powerFactor: 0.8 },
    outputs: { current: 10, apparentPower: 2300 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
