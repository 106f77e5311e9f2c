import type { SheetCase } from '../sheet-case.ts';

export const beltTensionCases: readonly SheetCase[] = [
  {
    name: '0.1 kg/m, 0.5 m, 40 Hz: 160 N',
    source: {
      title: 'reference cases of lifting and fitting',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { linearDensity: 0.1, span: 0.5, frequency: 40 },
    outputs: { tension: 160 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['BELT_STANDING', 'BELT_AGAIN'],
  },
  {
    name: '40 kg/m, 1.5 m at 1.8257 Hz: 1200 N',
    source: {
      title: 'public page on the frequency of belts',
      place: 'example of 1200 N, 40 kg and 1.5 m: the root of 1200/360 Hz',
      mark: 'read',
    },
    inputs: { linearDensity: 40, span: 1.5, frequency: 1.8257419 },
    outputs: { tension: 1200 },
    tolerance: { relative: 1e-7, reason: 'eight digits of the root' },
  },
  {
    name: 'about 16 mm in a metre',
    source: { title: 'belt trade', place: 'deflection of a 64th of the span', mark: 'memory' },
    inputs: { linearDensity: 0.1, span: 1, frequency: 40 },
    outputs: { deflection: 0.016 },
    tolerance: { relative: 0.03, reason: 'a rounded rule of thumb' },
  },
];
