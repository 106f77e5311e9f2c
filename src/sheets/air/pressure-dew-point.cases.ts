import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const printed = { absolute: 0.1, relative: 5e-4, reason: 'one printed digit of a degree' } as const;

export const pressureDewPointCases: readonly SheetCase[] = [
  {
    name: '+3 degC at 7 bar(g) is a frost point of -20.8 degC at the sea, -23.1 degC over supercooled water',
    source: script,
    inputs: { dewPoint: 276.15, pressure: 7e5 },
    outputs: {
      vapourPressure: 758.03,
      otherVapourPressure: 95.85,
      frostPoint: 252.35,
      dewPointOverWater: 250.05,
    },
    tolerance: printed,
    notes: ['DEW_POINT_TWO_SCALES', 'VAPOUR_IDEAL'],
  },
  {
    name: '+3 degC at 5.516 bar(g) is -18.6 degC frost, -20.8 degC over supercooled water',
    source: script,
    inputs: { dewPoint: 276.15, pressure: 5.516e5 },
    outputs: { frostPoint: 254.55, dewPointOverWater: 252.35 },
    tolerance: printed,
  },
  {
    name: '-40 degC at 7 bar(g) is a frost point of -57.0 degC',
    source: script,
    inputs: { dewPoint: 233.15, pressure: 7e5 },
    outputs: { frostPoint: 216.15 },
    tolerance: printed,
  },
  {
    name: 'back: a frost point of -20 degC at the atmosphere is +2.2 degC at 6 bar(g)',
    source: script,
    inputs: { dewPoint: 253.15, pressure: 0, otherPressure: 6e5 },
    outputs: { frostPoint: 275.35 },
    tolerance: printed,
  },
];
