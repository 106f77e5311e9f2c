import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const run = { voltage: 400, length: 150, resistance: 0.671e-3, reactance: 0.085e-3, powerFactor: 0.85 };

export const motorStartCases: readonly SheetCase[] = [
  {
    name: 'worked drop of 100 A over 150 m, drawn as a start: 15.98 V, 4.00 %',
    source: {
      title: 'page on IEC 60364 cable voltage drop',
      place: 'worked example, public page',
      mark: 'read',
    },
    inputs: { ...run, lockedRotor: 100, method: 'direct', ratio: 1, faultCurrent: 10000 },
    outputs: { drop: 15.98, dropShare: 0.04, current: 100 },
    tolerance: { absolute: 0.02, reason: 'printed to a hundredth of a volt' },
    notes: ['CAUTION_ELECTRICAL'],
  },
  {
    name: 'star-delta starts on a third of current and torque',
    source: { title: 'public text on star-delta starters', place: 'third of the line current', mark: 'read' },
    inputs: { ...run, length: 0, lockedRotor: 300, method: 'star-delta', ratio: 1, faultCurrent: 9900 },
    outputs: { current: 100, torque: 0.3333 },
    tolerance: { absolute: 1e-4, reason: 'four digits' },
  },
  {
    name: '100 A beside a fault current of 9.9 kA dips by 1 %',
    source: arithmetic,
    inputs: { ...run, length: 0, lockedRotor: 300, method: 'star-delta', ratio: 1, faultCurrent: 9900 },
    outputs: { dip: 0.01 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
  {
    name: 'autotransformer of tap 0.65: 42 % of current and torque',
    source: { title: 'usual figures of reduced-voltage starters', place: 'tap 0.65', mark: 'memory' },
    inputs: {
      ...run,
      length: 0,
      lockedRotor: 100,
      method: 'autotransformer',
      ratio: 0.65,
      faultCurrent: 1000,
    },
    outputs: { current: 42.25 },
    tolerance: { relative: 1e-2, reason: 'printed to two digits' },
    notes: ['START_SHARES_FROM_MEMORY', 'START_WEAK'],
  },
];
