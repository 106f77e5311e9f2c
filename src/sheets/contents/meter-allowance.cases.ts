import type { SheetCase } from '../sheet-case.ts';
import { allowanceScript, guideRectangular } from './allowance-sources.ts';

export const meterAllowanceCases: readonly SheetCase[] = [
  {
    name: 'JCGM 100, 4.3.7, example 2: bounds of 15 uV are 8.7 uV, here parts in a thousand after a decade',
    source: guideRectangular,
    inputs: { meterClass: 0.015, ratio: 10 },
    outputs: { deviation: 0.0087 },
    tolerance: { absolute: 0.00005, reason: 'two printed digits' },
  },
  ...[
    { meterClass: 0.005, ratio: 2, deviation: 0.0008689987451537571 },
    { meterClass: 0.002, ratio: 3.7, deviation: 0.000656102836688178 },
    { meterClass: 0.01, ratio: 0.05, deviation: 0.005773502691896258 },
  ].map(
    ({ deviation, ...inputs }): SheetCase => ({
      name: `uniform in its part of ${inputs.meterClass} after ${inputs.ratio} times`,
      source: allowanceScript,
      inputs,
      outputs: { deviation },
      tolerance: { relative: 1e-12, reason: 'double precision' },
    }),
  ),
];
