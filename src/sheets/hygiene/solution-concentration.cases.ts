import type { SheetCase } from '../sheet-case.ts';

export const solutionConcentrationCases: readonly SheetCase[] = [
  {
    name: '100 ppm of chlorine are 100 mg/L',
    source: {
      title: 'EPA usage of parts per million in water',
      place: '1 ppm = 1 mg/L',
      mark: 'common practice',
    },
    inputs: { share: 1e-4 },
    outputs: { concentration: 0.1 },
    tolerance: { relative: 1e-12, reason: 'the convention itself' },
  },
  {
    name: 'caustic of 2 % has 20.41 g/L at 20 degC',
    source: {
      title: 'handbook table of the density of sodium hydroxide',
      place: '1.0207 kg/L at 2 % and 20 degC',
      mark: 'memory',
    },
    inputs: { share: 0.02 },
    outputs: { concentration: 20.41 },
    tolerance: { relative: 0.025, reason: 'the solution is taken as heavy as water' },
  },
  {
    name: '1 % with three volumes of water is 2.5 g/L',
    source: { title: 'balance of the solute', place: 'by hand', mark: 'computed' },
    inputs: { share: 0.01, water: 3 },
    outputs: { concentration: 2.5 },
    tolerance: { relative: 1e-12, reason: 'a quarter of 10' },
  },
];
