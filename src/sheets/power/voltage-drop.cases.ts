import type { SheetCase } from '../sheet-case.ts';
import { independentScript } from './sources.ts';

const run = {
  phases: 'three-phase',
  voltage: 400,
  current: 100,
  length: 150,
  resistance: 0.671e-3,
  reactance: 0.085e-3,
  powerFactor: 0.85,
  parallel: 1,
};
const printed = { absolute: 0.02, reason: 'printed to a hundredth of a volt' } as const;

export const voltageDropCases: readonly SheetCase[] = [
  {
    name: '100 A over 150 m of 0.671 + j0.085 ohm/km at 400 V: 15.98 V',
    source: {
      title: 'page on IEC 60364 cable voltage drop',
      place: 'worked example, public page',
      mark: 'read',
    },
    inputs: run,
    outputs: { drop: 15.98 },
    tolerance: printed,
    notes: ['CAUTION_ELECTRICAL', 'DROP_OVER_3'],
  },
  {
    name: 'the same: 4.00 %',
    source: {
      title: 'page on IEC 60364 cable voltage drop',
      place: 'worked example, public page',
      mark: 'read',
    },
    inputs: run,
    outputs: { share: 0.04 },
    tolerance: { absolute: 5e-5, reason: 'printed to a hundredth of a per cent' },
  },
  {
    name: 'the same, exactly: 16.05 V',
    source: independentScript,
    inputs: run,
    outputs: { exactDrop: 16.05, loadVoltage: 383.95 },
    tolerance: printed,
  },
  {
    name: 'single phase: 20 A over 30 m there and back, 0.005 ohm/m, cos phi 1: 6 V of 230 V',
    source: { title: 'Ohm’s law', place: 'worked apart from this program', mark: 'computed' },
    inputs: {
      phases: 'single-phase',
      voltage: 230,
      current: 20,
      length: 30,
      resistance: 0.005,
      reactance: 0,
      powerFactor: 1,
      parallel: 1,
    },
    outputs: { drop: 6, exactDrop: 6, loadVoltage: 224 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
