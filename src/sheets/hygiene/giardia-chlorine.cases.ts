import type { SheetCase } from '../sheet-case.ts';
import { cfr141, epaLookUp, epaTables } from './sources.ts';

const printed = { relative: 1e-9, reason: 'a printed figure itself' } as const;
const [mg, ct] = [1e-3, 0.06];

export const giardiaChlorineCases: readonly SheetCase[] = [
  {
    name: '19 degC, pH 7.2, 1.1 mg/L, cautious: CT 92',
    source: epaLookUp,
    inputs: { temperature: 292.15, acidity: 7.2, chlorine: 1.1 * mg },
    outputs: { needed: 92 * ct },
    tolerance: printed,
    notes: ['CT_NOT_FOR_RINSE'],
  },
  {
    name: '0.4 degC, pH 7.6, 0.82 mg/L, 1.5 logs, cautious: CT 152, half of 304',
    source: epaLookUp,
    inputs: { temperature: 273.55, acidity: 7.6, chlorine: 0.82 * mg, logs: 1.5 },
    outputs: { needed: 152 * ct },
    tolerance: printed,
    notes: ['CT_COLD'],
  },
  {
    name: '1.2 mg/L for 60 min at 15 degC and pH 7.5: CT 72, ratio 0.7826, 2.348 logs',
    source: cfr141,
    inputs: { temperature: 288.15, acidity: 7.5, chlorine: 1.2 * mg, time: 3600 },
    outputs: { ct: 72 * ct, ratio: 0.7826, reached: 2.348, neededTime: 4600 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
  },
  ...(
    [
      [5, 9, 3, 389],
      [10, 6, 0.4, 73],
      [25, 8.5, 1.8, 72],
      [0.5, 7.5, 2.2, 297],
    ] as const
  ).map(([degrees, acidity, chlorine, given]) => ({
    name: `table: ${degrees} degC, pH ${acidity}, ${chlorine} mg/L: CT ${given}`,
    source: epaTables,
    inputs: { temperature: degrees + 273.15, acidity, chlorine: chlorine * mg, lookUp: 'interpolated' },
    outputs: { needed: given * ct },
    tolerance: printed,
    notes: ['CT_INTERPOLATED'],
  })),
];
