import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const carryOverPhCases: readonly SheetCase[] = [
  {
    name: '600 bottles/h, 4 mL at 50 mg/L, 60 L/h of make-up: 1.92 mg/L, pH 9.68',
    source: script,
    inputs: { rate: 600 / 3600, carry: 4e-6, carried: 0.05, makeUp: 0.06 / 3600 },
    outputs: { caustic: 1.92e-3, acidity: 9.68 },
    tolerance: { relative: 5e-3, reason: 'three printed digits' },
    notes: ['CARRY_OVER_SPOILS', 'UNBUFFERED', 'CHLORINE_STRIP_TOTAL'],
  },
  {
    name: 'at pH 9.68 the share of hypochlorous acid is 0.0077',
    source: script,
    inputs: { rate: 600 / 3600, carry: 4e-6, carried: 0.05, makeUp: 0.06 / 3600 },
    outputs: { share: 0.0077 },
    tolerance: { absolute: 1e-4, reason: 'two printed digits, pH printed with two decimals' },
  },
];
