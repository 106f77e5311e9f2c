import type { SheetCase } from '../sheet-case.ts';
import { decided, halfLitres } from './average-lot-examples.ts';
import { euDirective, studentFactors, ukRegulations } from './rule-sources.ts';

const annex = { ...euDirective, place: 'Annex II 2.2.1' };
const opened = { ...euDirective, place: 'Annex II 2.2.2' };

/** First stage of the double plan: lot, packages, accept, reject; then both stages together. */
const rows = [
  [100, 30, 1, 3, 60, 4, 5],
  [500, 30, 1, 3, 60, 4, 5],
  [501, 50, 2, 5, 100, 6, 7],
  [3200, 50, 2, 5, 100, 6, 7],
  [3201, 80, 3, 7, 160, 8, 9],
] as const;

export const euLotCases: readonly SheetCase[] = [
  ...rows.flatMap(([lotSize, n1, a1, r1, n2, a2, r2]) => [
    decided(
      `batch of ${lotSize}: ${a1} defective of ${n1} accept`,
      annex,
      { lotSize, volumes: halfLitres(a1, n1) },
      {
        itemVerdict: 'accept',
        verdict: 'accept',
        counted: n1,
        defective: a1,
        deficiency: 15e-6,
      },
    ),
    decided(
      `batch of ${lotSize}: ${a1 + 1} defective of ${n1} take ${n2 - n1} more`,
      annex,
      { lotSize, volumes: halfLitres(a1 + 1, n1) },
      { itemVerdict: 'take more', verdict: 'take more', more: n2 - n1 },
    ),
    decided(
      `batch of ${lotSize}: ${r1} defective of ${n1} reject`,
      annex,
      { lotSize, volumes: halfLitres(r1, n1) },
      { itemVerdict: 'reject', verdict: 'reject', more: 0 },
    ),
    decided(
      `batch of ${lotSize}: ${r2} defective of both samples reject`,
      annex,
      { lotSize, volumes: [...halfLitres(a1 + 1, n1), ...halfLitres(r2 - a1 - 1, n2 - n1)] },
      { itemVerdict: 'reject', counted: n2, defective: r2 },
    ),
    decided(
      `batch of ${lotSize}: ${a2} defective of both samples accept`,
      annex,
      { lotSize, volumes: [...halfLitres(a1 + 1, n1), ...halfLitres(a2 - a1 - 1, n2 - n1)] },
      { itemVerdict: 'accept', counted: n2, defective: a2 },
    ),
  ]),
  decided(
    'packages are opened: 1 defective of 20 accepts, whatever the batch',
    opened,
    { lotSize: 5000, plan: 'destructive', volumes: halfLitres(1, 20) },
    { itemVerdict: 'accept', counted: 20, meanSample: 20 },
  ),
  decided(
    'packages are opened: 2 defective of 20 reject',
    opened,
    { lotSize: 5000, plan: 'destructive', volumes: halfLitres(2, 20) },
    { itemVerdict: 'reject', verdict: 'reject' },
  ),
  ...(
    [
      [300, 'double', 30, 0.503],
      [3000, 'double', 50, 0.379],
      [30_000, 'double', 50, 0.379],
      [3000, 'destructive', 20, 0.64],
    ] as const
  ).map(([lotSize, plan, n, factor]): SheetCase => {
    // half at 499 and half at 500 mL: s = 0.5 sqrt(n/(n-1)) mL, mean 0.5 mL short
    const spread = 0.5e-6 * Math.sqrt(n / (n - 1));
    return {
      name: `mean check, batch of ${lotSize}, ${plan}: 499.5 mL against 500 - ${factor} s fails`,
      source: { ...ukRegulations, place: 'schedule 2, 4.5 and 4.6: the constants of the directive' },
      inputs: {
        quantity: 5e-4,
        lotSize,
        plan,
        volumes: Array.from({ length: 80 }, (_, i) => (i % 2 === 0 ? 499e-6 : 500e-6)),
      },
      outputs: {
        meanVerdict: 'reject',
        verdict: 'reject',
        meanSample: n,
        mean: 499.5e-6,
        spread,
        leastMean: 5e-4 - factor * spread,
      },
      tolerance: { absolute: 1e-13, reason: 'arithmetic of doubles' },
    };
  }),
  ...(
    [
      [300, 'double', 30, 0.50324],
      [3000, 'double', 50, 0.379],
      [3000, 'destructive', 20, 0.63972],
    ] as const
  ).map(
    ([lotSize, plan, n, factor]): SheetCase => ({
      name: `the constant for ${n} packages is t(0.995)/sqrt n = ${factor}`,
      source: studentFactors,
      inputs: {
        quantity: 5e-4,
        lotSize,
        plan,
        volumes: Array.from({ length: 80 }, (_, i) => (i % 2 === 0 ? 490e-6 : 510e-6)),
      },
      outputs: { leastMean: 5e-4 - factor * 10e-6 * Math.sqrt(n / (n - 1)) },
      tolerance: { absolute: 4e-9, reason: 'the rule prints the constant to three decimals' },
    }),
  ),
  decided(
    'packages below 500 - 30 mL are counted apart',
    { ...euDirective, place: 'Annex I 1.3 and 2.4' },
    { lotSize: 200, volumes: [469e-6, 471e-6, ...halfLitres(0, 28)] },
    { barred: 1, defective: 2 },
  ),
];
