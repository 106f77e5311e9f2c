import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const vapourPressureCases: readonly SheetCase[] = [
  ...(
    [
      [5, 872.6],
      [20, 2339.3],
      [60, 19946],
      [90, 70182],
    ] as const
  ).map(([celsius, vapourPressure]) => ({
    name: `IAPWS-95 saturation at ${celsius} degC`,
    source: iapws95,
    inputs: { temperature: celsius + 273.15 },
    outputs: { vapourPressure },
    tolerance: {
      relative: 1e-4,
      reason: 'printed digits; the saturation equation is within 0.02 % of IAPWS-95',
    },
  })),
  ...(
    [
      [20, 2339],
      [40, 7385],
      [80, 47415],
    ] as const
  ).map(([celsius, vapourPressure]) => ({
    name: `a university's table of water data, ${celsius} degC`,
    source: { title: 'Water data table of a university', place: 'vapour pressure', mark: 'read' as const },
    inputs: { temperature: celsius + 273.15 },
    outputs: { vapourPressure },
    tolerance: { relative: 3e-4, reason: 'four printed digits' },
  })),
];
