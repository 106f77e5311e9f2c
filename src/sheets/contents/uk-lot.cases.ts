import type { SheetCase } from '../sheet-case.ts';
import { decided, halfLitres } from './average-lot-examples.ts';
import { ruleArithmetic, ukRegulations } from './rule-sources.ts';

const paragraph = (place: string) => ({ ...ukRegulations, place: `schedule 2, ${place}; public page` });

export const ukLotCases: readonly SheetCase[] = [
  ...(
    [
      [500, 50, 3, 4],
      [501, 80, 5, 6],
      [3201, 125, 7, 8],
    ] as const
  ).flatMap(([lotSize, n, accept, reject]) => [
    decided(
      `single plan, batch of ${lotSize}: ${accept} defective of ${n} accept`,
      paragraph('3.3 to 3.5'),
      { lotSize, plan: 'single', volumes: halfLitres(accept, n) },
      { itemVerdict: 'accept', counted: n, defective: accept },
    ),
    decided(
      `single plan, batch of ${lotSize}: ${reject} defective of ${n} reject`,
      paragraph('3.3 to 3.5'),
      { lotSize, plan: 'single', volumes: halfLitres(reject, n) },
      { itemVerdict: 'reject', verdict: 'reject' },
    ),
    decided(
      `single plan, batch of ${lotSize}: ten packages ask for ${n - 10} more`,
      paragraph('3.3 to 3.5'),
      { lotSize, plan: 'single', volumes: halfLitres(0, 10) },
      { verdict: 'take more', more: n - 10 },
    ),
  ]),
  decided(
    'batch of 60 checked whole: 3 defective are 5 % and accepted',
    paragraph('3.6'),
    { lotSize: 60, volumes: halfLitres(3, 60) },
    { itemVerdict: 'accept', defective: 3 },
  ),
  decided(
    'batch of 60 checked whole: 4 defective are more than 5 %',
    paragraph('3.6'),
    { lotSize: 60, volumes: halfLitres(4, 60) },
    { itemVerdict: 'reject', verdict: 'reject' },
  ),
  {
    name: 'batch of 60 checked whole: the mean itself must reach the label',
    source: paragraph('4.7'),
    inputs: { quantity: 5e-4, lotSize: 60, volumes: Array.from({ length: 60 }, () => 499.9e-6) },
    outputs: { meanVerdict: 'reject', verdict: 'reject', meanSample: 60, mean: 499.9e-6, leastMean: 5e-4 },
    tolerance: { absolute: 1e-13, reason: 'arithmetic of doubles' },
    notes: ['UK_DEFICIENCY_MEMORY'],
  },
  {
    name: 'batch of 400: 30 packages half at 499, half at 500 mL need 500 - 0.503 x 0.50855 mL',
    source: paragraph('4.5'),
    inputs: {
      quantity: 5e-4,
      lotSize: 400,
      plan: 'single',
      volumes: Array.from({ length: 50 }, (_, i) => (i % 2 === 0 ? 499e-6 : 500e-6)),
    },
    outputs: { spread: 0.508548e-6, leastMean: 499.7442e-6, meanVerdict: 'reject' },
    tolerance: { absolute: 1e-12, reason: 'printed digits' },
  },
  {
    name: 'one package short of 30 mL is barred; the deficiency of 500 mL is 15 mL',
    source: ruleArithmetic,
    inputs: { quantity: 5e-4, lotSize: 400, plan: 'single', volumes: [469e-6, ...halfLitres(0, 49)] },
    outputs: { barred: 1, deficiency: 15e-6 },
    tolerance: { absolute: 1e-15, reason: 'counts' },
    notes: ['LOT_BARRED'],
  },
];
