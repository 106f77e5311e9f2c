import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const glass = {
  thickness: 0.003,
  density: 2500,
  specificHeat: 820,
  conductivity: 1,
  surface: 1000,
  spray: 353.15,
  start: 288.15,
};

export const wallLagCases: readonly SheetCase[] = [
  {
    name: 'glass of 3 mm from 15 degC under 80 degC, 1000 W/(m2 K): 6.15 s, 56.09 degC after it',
    source: script,
    inputs: { ...glass, time: 6.15 },
    outputs: { timeConstant: 6.15, wall: 56.088 + 273.15, biot: 3, step: 65 },
    tolerance: { relative: 1e-5, reason: 'five printed digits' },
    notes: ['WALL_THICK', 'WALL_STEP_GLASS', 'CAUTION_SCALD'],
  },
  {
    name: 'after three time constants 5 % of the step is left: 76.76 degC',
    source: script,
    inputs: { ...glass, time: 18.45 },
    outputs: { wall: 76.764 + 273.15 },
    tolerance: { relative: 1e-5, reason: 'five printed digits' },
  },
];
