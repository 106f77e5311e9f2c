import type { SheetCase } from '../sheet-case.ts';
import { handbookText, ruleArithmetic } from './rule-sources.ts';

const exact = { absolute: 1e-9, reason: 'sums of printed figures' } as const;
/** Two of twelve, grams: errors range over 3.7, tares over 0.5. */
const two = { gross: [0.5449, 0.5412], tares: [0.0246, 0.0251] } as const;

export const handbook133TaresCases: readonly SheetCase[] = [
  {
    name: 'two of twelve opened: R_c 3.7 g, R_t 0.5 g, ratio 7.4; by a table that says five, three more',
    source: ruleArithmetic,
    inputs: { ...two, lotSize: 200, typedTares: 5 },
    outputs: { opened: 2, errorRange: 0.0037, tareRange: 0.0005, ratio: 7.4, wanted: 5, more: 3 },
    tolerance: exact,
    notes: ['TARES_TYPED'],
  },
  {
    name: 'chapter 2: in a sample under twelve those opened first are all',
    source: handbookText,
    inputs: { ...two, lotSize: 9 },
    outputs: { wanted: 2, more: 0 },
    tolerance: exact,
  },
  {
    name: 'of a table that nobody has read no more can be asked than the sample has',
    source: ruleArithmetic,
    inputs: { ...two, lotSize: 200 },
    outputs: { wanted: 12, more: 10 },
    tolerance: exact,
    notes: ['TARES_TABLE_UNREAD'],
  },
];
