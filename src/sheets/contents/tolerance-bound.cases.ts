import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const noncentral: Source = {
  title: 'noncentral t distribution, by quadrature of its definition with 40 digits and by scipy 1.17',
  place: 'independent script',
  mark: 'computed',
};
const unit = { mean: 100e-6, spread: 1e-6 } as const;
const row = (bottles: number, coverage: number, confidence: number, factor: number): SheetCase => ({
  name: `${bottles} bottles, ${100 * coverage} % of all with ${100 * confidence} %: k ${factor}`,
  source: noncentral,
  inputs: { ...unit, bottles, coverage, confidence },
  outputs: { factor },
  tolerance: { absolute: 0.00051, reason: 'three digits after the point' },
});

export const toleranceBoundCases: readonly SheetCase[] = [
  row(5, 0.95, 0.9, 3.4),
  row(5, 0.99, 0.99, 8.939),
  row(10, 0.9, 0.95, 2.355),
  row(12, 0.99, 0.9, 3.371),
  row(20, 0.99, 0.95, 3.295),
  row(30, 0.95, 0.99, 2.515),
  row(100, 0.99, 0.95, 2.684),
  {
    name: 'forty-three bottles, 90 % of all with 99 %: k 1.87395; the bound itself to its digits',
    source: noncentral,
    inputs: { ...unit, bottles: 43, coverage: 0.9, confidence: 0.99 },
    outputs: { factor: 1.8739536058512, bound: 98.1260463941488e-6 },
    tolerance: { relative: 1e-11, reason: 'printed digits' },
  },
];
