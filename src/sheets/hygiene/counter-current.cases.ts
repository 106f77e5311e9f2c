import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const counterCurrentCases: readonly SheetCase[] = [
  {
    name: 'two stages at 99 to 1: 9901 to 1',
    source: script,
    inputs: { start: 10, carry: 1e-5, fresh: 99e-5, stages: 2 },
    outputs: { ratio: 9901, rinseRatio: 99 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
  {
    name: '20 g/L, 4 mL carried, three stages, 180 mL fresh: 0.2146 mg/L',
    source: script,
    inputs: { start: 20, carry: 4e-6, fresh: 180e-6, stages: 3 },
    outputs: { left: 0.2146e-3 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
    notes: ['PERFECT_MIXING'],
  },
  {
    name: 'the same with 60 mL fresh: 5.53 mg/L',
    source: script,
    inputs: { start: 20, carry: 4e-6, fresh: 60e-6, stages: 3 },
    outputs: { left: 5.53e-3 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
  {
    name: 'as much water as is carried, three stages: 4 to 1, the limit of the closed form',
    source: script,
    inputs: { start: 20, carry: 4e-6, fresh: 4e-6, stages: 3 },
    outputs: { ratio: 4, rinseRatio: 1 },
    tolerance: { relative: 1e-12, reason: 'exact' },
  },
];
