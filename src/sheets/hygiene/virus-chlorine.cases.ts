import type { SheetCase } from '../sheet-case.ts';
import { ctInterpolation, epaTables, script } from './sources.ts';

const [mg, ct] = [1e-3, 0.06];
const printed = { relative: 1e-9, reason: 'a printed figure itself' } as const;

export const virusChlorineCases: readonly SheetCase[] = [
  {
    name: '4 logs at 2 degC and pH 7.5, interpolated: CT 10.67',
    source: ctInterpolation,
    inputs: { temperature: 275.15, acidity: 7.5, chlorine: mg, lookUp: 'interpolated' },
    outputs: { needed: 10.67 * ct },
    tolerance: { absolute: 0.005 * ct, reason: 'half of the last printed digit' },
    notes: ['CT_INTERPOLATED'],
  },
  {
    name: 'table: 4 logs at 10 degC, pH 7: CT 6; at 12 degC the colder column',
    source: epaTables,
    inputs: { temperature: 285.15, acidity: 7, chlorine: mg },
    outputs: { needed: 6 * ct },
    tolerance: printed,
  },
  {
    name: 'table: 4 logs at 20 degC, pH 10: CT 22, also at pH 9.4',
    source: epaTables,
    inputs: { temperature: 293.15, acidity: 9.4, chlorine: mg },
    outputs: { needed: 22 * ct },
    tolerance: printed,
    notes: ['CT_VIRUS_PH_10'],
  },
  {
    name: '0.5 mg/L for 3 min at 20 degC, pH 7: CT 1.5 is half of 3, 2 logs; 4 logs ask 6 min',
    source: script,
    inputs: { temperature: 293.15, acidity: 7, chlorine: 0.5 * mg, time: 180 },
    outputs: { ct: 1.5 * ct, ratio: 0.5, reached: 2, neededTime: 360 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];
