import type { SheetCase } from '../sheet-case.ts';
import { handbookTable, handbookText, studentFactors } from './rule-sources.ts';

const rules = {
  ...handbookText,
  title: 'the rules of NIST Handbook 133, chapter 2',
  place: 'independent script; the variation of 15 mL is assumed for the example',
  mark: 'computed',
} as const;

const gross = [544.9, 541.2, 543, 546.3, 539.8, 542.7, 544.1, 540.5, 543.6, 541.9, 538.9, 542.2];
const half = {
  quantity: 5e-4,
  lotSize: 200,
  tares: [0.0246, 0.0251],
  density: 1037.5,
  variation: 15e-6,
} as const;
const microlitre = { absolute: 1e-9, reason: 'printed to a microlitre' } as const;

/** Packages in the lot, sample, exact factor of Student. */
const factors = [
  [2, 2, 8.98464],
  [3, 3, 2.48414],
  [4, 4, 1.59122],
  [5, 5, 1.24166],
  [6, 6, 1.04944],
  [7, 7, 0.92485],
  [8, 8, 0.83602],
  [9, 9, 0.76867],
  [10, 10, 0.71536],
  [11, 11, 0.67181],
  [250, 12, 0.63537],
  [3200, 24, 0.42226],
  [3201, 48, 0.29037],
] as const;

export const handbook133LotCases: readonly SheetCase[] = [
  {
    name: 'lot of 200 half litres: average -1.1325 mL inside a limit of 1.3125 mL passes',
    source: rules,
    inputs: { ...half, gross: gross.map((grams) => grams / 1000) },
    outputs: {
      verdict: 'accept',
      sample: 12,
      meanTare: 0.02485,
      nominalGross: 0.5436,
      meanError: -1.1325e-6,
      spread: 2.0669e-6,
      factor: 0.635,
      errorLimit: 1.3125e-6,
      unreasonable: 0,
      more: 0,
    },
    tolerance: microlitre,
    notes: ['HANDBOOK_VARIATION_TYPED', 'HANDBOOK_PLAN_MEMORY', 'HANDBOOK_TARES', 'RULE_AUTHORITY'],
  },
  {
    name: 'all 2.6 g lighter: -3.6386 mL fails on the average, the smallest error only -7.04 mL',
    source: rules,
    inputs: { ...half, gross: gross.map((grams) => (grams - 2.6) / 1000) },
    outputs: { verdict: 'reject', meanError: -3.6386e-6, errorLimit: 1.3125e-6, unreasonable: 0 },
    tolerance: microlitre,
  },
  {
    name: 'the same: the smallest error',
    source: rules,
    inputs: { ...half, gross: gross.map((grams) => (grams - 2.6) / 1000) },
    outputs: { worst: -7.04e-6 },
    tolerance: { absolute: 5e-9, reason: 'printed to a hundredth of a millilitre' },
  },
  {
    name: 'one error beyond the variation fails the lot although the average is far over',
    source: handbookText,
    inputs: { ...half, gross: [0.5279, ...gross.slice(1).map((grams) => (grams + 9) / 1000)] },
    outputs: { verdict: 'reject', unreasonable: 1 },
    tolerance: microlitre,
  },
  ...factors.map(
    ([lotSize, sample, factor]): SheetCase => ({
      name: `lot of ${lotSize}: the factor for ${sample} is t(0.975)/sqrt n`,
      source: studentFactors,
      inputs: { ...half, lotSize, gross: [0.544, 0.545] },
      outputs: { factor },
      tolerance: { absolute: 5.1e-4, reason: 'the handbook prints the factor to three decimals' },
    }),
  ),
  ...factors.map(
    ([lotSize, sample]): SheetCase => ({
      name: `table 2-1: a lot of ${lotSize} takes ${sample}`,
      source: handbookTable,
      inputs: { ...half, lotSize, gross: [0.544, 0.545] },
      outputs: { sample, allowed: lotSize > 3200 ? 1 : 0 },
      tolerance: { absolute: 1e-9, reason: 'whole numbers' },
    }),
  ),
];
