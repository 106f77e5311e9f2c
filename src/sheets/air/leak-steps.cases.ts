import type { SheetCase } from '../sheet-case.ts';

const psi = 6894.757293;
const cfm = (0.0004719474432 * 14.7 * psi) / 1e5;
const navy = {
  title: 'US Navy MO-209, Maintenance of steam, hot water and compressed air distribution systems',
  place: 'tables 5-3 and 5-4, public transcription; the volume of 629 ft3 is inferred from them',
  mark: 'read',
} as const;
const inputs = {
  volume: 629 * 0.0283168466,
  times: [0, 10.7, 23.28, 38.57, 58.93, 87.47, 135.02, 277.67].map((minutes) => 60 * minutes),
  pressures: [90, 80, 70, 60, 50, 40, 30, 20].map((p) => p * psi),
  workingPressure: 96 * psi,
};

export const leakStepsCases: readonly SheetCase[] = [
  {
    name: 'US Navy MO-209: losses of 40, 34, 28, 21, 15, 9 and 3 scfm',
    source: navy,
    inputs,
    outputs: { losses: [40, 34, 28, 21, 15, 9, 3].map((flow) => flow * cfm) },
    tolerance: { absolute: 0.5 * cfm, reason: 'printed whole scfm' },
    notes: ['LEAK_STEPS_EXTRAPOLATED', 'LEAK_STEPS_STEEP'],
  },
  {
    name: 'US Navy MO-209: the line 0.6214 scfm/psi less 12.75 scfm, 46.9 scfm at 96 psig',
    source: navy,
    inputs,
    outputs: { slope: (0.6214 * cfm) / psi, intercept: -12.75 * cfm, leak: 46.9 * cfm },
    tolerance: { relative: 5e-3, reason: 'printed 0.62, -12.75 and 47 scfm' },
  },
];
