import type { SheetCase } from '../sheet-case.ts';

/** Six bottles, in the unit of the kind over a thousand: the same figures whatever is measured. */
const six = [752.1, 753.4, 751.8, 752.9, 754, 752.6];

/** Figures of an independent statistics library for six values, scaled to a kind. */
export const sampleSpreadCases = (what: string, scale: number): readonly SheetCase[] => {
  const scaled = (value: number): number => value * scale;
  return [
    {
      name: `six ${what}: mean 752.8, s 0.817313, nearly all from 747.441 to 758.159`,
      source: {
        title: 'SciPy, distributions t, chi-squared and non-central t',
        edition: '1.17.1',
        place: 'independent script',
        mark: 'computed',
      },
      inputs: { values: six.map(scaled), confidence: 0.95, coverage: 0.99 },
      outputs: {
        mean: scaled(752.8),
        spread: scaled(0.817313),
        meanLow: scaled(751.942283),
        meanHigh: scaled(753.657717),
        spreadLow: scaled(0.549275),
        spreadHigh: scaled(1.707577),
        low: scaled(747.441291),
        high: scaled(758.158709),
      },
      tolerance: { relative: 1e-6, reason: 'six printed decimals' },
    },
  ];
};
