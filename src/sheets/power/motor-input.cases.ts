import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, switchgearAppendix } from './sources.ts';

const printed = { relative: 1e-2, reason: 'printed to two or three digits' } as const;
const plate = (shaftPower: number, powerFactor: number, efficiency: number) => ({
  shaftPower,
  voltage: 400,
  efficiency,
  powerFactor,
  phases: 'three-phase',
});

export const motorInputCases: readonly SheetCase[] = [
  {
    name: '1.5 kW, cos phi 0.81, efficiency 0.74: 3.6 A',
    source: switchgearAppendix,
    inputs: plate(1500, 0.81, 0.74),
    outputs: { current: 3.6 },
    tolerance: printed,
  },
  {
    name: '5.5 kW, cos phi 0.82, efficiency 0.86: 11.3 A',
    source: switchgearAppendix,
    inputs: plate(5500, 0.82, 0.86),
    outputs: { current: 11.3 },
    tolerance: printed,
  },
  {
    name: '15 kW, cos phi 0.84, efficiency 0.88: 29.3 A',
    source: switchgearAppendix,
    inputs: plate(15000, 0.84, 0.88),
    outputs: { current: 29.3 },
    tolerance: printed,
  },
  {
    name: '1 kW at the shaft, half lost, cos phi 0.5, 200 V, one phase: 2 kW, 4 kVA, 20 A',
    source: arithmetic,
    inputs: { shaftPower: 1000, voltage: 200, efficiency: 0.5, powerFactor: 0.5, phases: 'single-phase' },
    outputs: { current: 20, inputPower: 2000, apparentPower: 4000 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
