import type { SheetCase } from '../sheet-case.ts';

const study = {
  title: 'Measurement systems analysis manual, study of 10 parts, 3 operators, 3 trials',
  edition: '4th',
  place: 'data sheet and report; public transcription of the filled-in form',
  mark: 'read',
} as const;

export const gaugeStudyCases: readonly SheetCase[] = [
  {
    name: 'classic study: EV 0.20186, AV 0.22967, GRR 0.30577, PV 1.10460, TV 1.14613, 26.68 %, 5 classes',
    source: study,
    inputs: {
      cellRanges: [0.184, 0.513, 0.328],
      operatorMeans: [0.19033, 0.06833, -0.25433],
      partMeans: [0.16889, -0.85111, 1.09889, 0.36667, -1.06444, -0.18556, 0.45444, -0.34222, 1.94, -1.57111],
      trials: '3',
    },
    outputs: {
      repeatability: 0.20186,
      reproducibility: 0.22967,
      measuring: 0.30577,
      parts: 1.1046,
      total: 1.14613,
      share: 0.2668,
      categories: 5,
    },
    tolerance: { relative: 2.5e-4, reason: 'the form uses constants of four digits' },
  },
];
