import type { SheetCase } from '../sheet-case.ts';
import { twoSolutions } from './sources.ts';

const inputs = {
  bore: 0.05,
  rod: 0.02,
  stroke: 0.2,
  atmosphere: 101300,
  load: 300,
  friction: 108.31,
  mass: 10,
  supplyConductance: 1.5e-8,
  supplyRatio: 0.3,
  exhaustConductance: 1.2e-8,
  exhaustRatio: 0.3,
  deadDriven: 50e-6,
  deadExhausting: 50e-6,
};

export const strokeTimeCases: readonly SheetCase[] = [
  ...(
    [
      [5.516, 0.449, 0.408, 0.078],
      [4.137, 0.516, 0.459, 0.126],
      [3, 0.663, 0.584, 0.205],
      [2.5, 0.869, 0.773, 0.277],
    ] as const
  ).map(([bar, longest, shortest, breakaway]) => ({
    name: `50 mm, 300 N and 10 kg over 200 mm at ${bar} bar(g): ${longest} s, adiabatic ${shortest} s, moves after ${breakaway} s`,
    source: twoSolutions,
    inputs: { ...inputs, pressure: bar * 1e5 },
    outputs: { longest, shortest, breakaway },
    tolerance: { relative: 3e-2, reason: 'as the reference states it; three printed digits' },
    notes: ['STROKE_NO_CUSHION', 'CAUTION_COMPRESSED_AIR'],
  })),
  ...(
    [
      [5.516, 0.7276],
      [4.137, 0.7047],
      [3, 0.5665],
      [2.5, 0.4046],
      [2.2, 0.2217],
    ] as const
  ).map(([bar, terminalSpeed]) => ({
    name: `it runs at ${terminalSpeed} m/s at ${bar} bar(g)`,
    source: twoSolutions,
    inputs: { ...inputs, pressure: bar * 1e5 },
    outputs: { terminalSpeed },
    tolerance: { relative: 5e-3, reason: 'as the reference states it' },
  })),
  {
    name: 'it stalls at 2.079 bar(g); 300 N of the 589.0 - 108.3 N at 3 bar(g) are a load ratio of 0.624',
    source: twoSolutions,
    inputs: { ...inputs, pressure: 3e5 },
    outputs: { stallPressure: 2.079e5, loadRatio: 0.624 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['LOAD_RATIO_HIGH'],
  },
];
