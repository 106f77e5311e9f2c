import type { SheetCase } from '../sheet-case.ts';
import { euDirective, euItalian, oimlTransposed, ukErrors } from './rule-sources.ts';
import type { DeficiencyRule } from './tolerable-deficiency.ts';

const exact = { absolute: 1e-15, reason: 'exact but for rounding of doubles' } as const;

const row = (rule: DeficiencyRule, source: SheetCase['source'], quantity: number, deficiency: number) => ({
  name: `${rule}: ${quantity} mL may be short of ${deficiency} mL`,
  source,
  inputs: { rule, quantity: quantity * 1e-6 },
  outputs: { deficiency: deficiency * 1e-6 },
  tolerance: exact,
});

/** Label and deficiency, mL, on which the tables agree. */
const common = [
  [40, 3.6],
  [75, 4.5],
  [150, 6.8],
  [250, 9],
  [330, 9.9],
  [500, 15],
  [750, 15],
  [1000, 15],
  [2000, 30],
] as const;

export const tolerableDeficiencyCases: readonly SheetCase[] = [
  ...common.map(([quantity, deficiency]) => row('OIML R 87', oimlTransposed, quantity, deficiency)),
  row('OIML R 87', oimlTransposed, 1500, 23),
  row('OIML R 87', oimlTransposed, 12_000, 150),
  ...common.map(([quantity, deficiency]) => row('EU average system', euDirective, quantity, deficiency)),
  row('EU average system', euItalian, 1500, 22.5),
  ...common.map(([quantity, deficiency]) => row('UK average system', ukErrors, quantity, deficiency)),
  {
    name: 'Directive 76/211/EEC: 500 mL is defective below 485 mL, must not bear the mark below 470 mL',
    source: euDirective,
    inputs: { rule: 'EU average system', quantity: 5e-4 },
    outputs: { least: 485e-6, barredBelow: 470e-6 },
    tolerance: exact,
    notes: ['RULE_AUTHORITY'],
  },
];
