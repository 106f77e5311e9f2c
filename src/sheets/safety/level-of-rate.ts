import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { failureRates } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { bandsEnd, hasLevel, type Level, levelOf, levels } from './levels.ts';
import { iso13849 } from './sources.ts';

/** A problem where so many dangerous failures leave no level. */
export const noLevelProblems = (path: string, rate: number): readonly Problem[] =>
  hasLevel(rate) ? [] : [{ code: 'LEVEL_NONE', path, given: rate, allowed: '< 1e-4/h' }];

export const levelOfRateSheet = defineSheet({
  id: 'safety/level-of-rate',
  version: 1,
  inputs: { rate: numberField('failureRate', 'PFH_d', failureRates) },
  outputs: { level: choiceField<Level>('PL', levels) },
  formula: [
    'a: 10^{-5} \\text{ to } 10^{-4}, \\quad b: 3 \\cdot 10^{-6} \\text{ to } 10^{-5}, \\quad c: 10^{-6} \\text{ to } 3 \\cdot 10^{-6}, \\quad d: 10^{-7} \\text{ to } 10^{-6}, \\quad e: 10^{-8} \\text{ to } 10^{-7} \\quad (1/\\mathrm{h})',
  ],
  limits: [
    guardingCaution,
    { code: 'LEVEL_BELOW_BANDS', broken: ({ rate }) => rate < bandsEnd * (1 - 1e-9) },
    always('LEVEL_NOT_NUMBER_ALONE'),
  ],
  sources: [{ ...iso13849, place: 'table 3; public transcription and the safety manual of a component' }],
  check: ({ rate }) => noLevelProblems('rate', rate),
  compute: ({ rate }: { readonly rate: number }) => ({ level: levelOf(rate) }),
});
