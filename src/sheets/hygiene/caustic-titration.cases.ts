import type { SheetCase } from '../sheet-case.ts';
import { neutralisation } from './sources.ts';

const millilitre = 1e-6;
const tolerance = { relative: 2e-3, reason: 'three printed digits' } as const;

export const causticTitrationCases: readonly SheetCase[] = [
  {
    name: '10 mL of bath, 12.5 mL of 0.5 N acid: 2.50 % w/v',
    source: neutralisation,
    inputs: {
      sample: 10 * millilitre,
      normality: 500,
      pink: 12.5 * millilitre,
      total: 12.5 * millilitre,
    },
    outputs: { sodiumHydroxide: 25, alkali: 25, carbonate: 0 },
    tolerance: { ...tolerance, absolute: 1e-9 },
  },
  {
    name: '10 mL, P 18.0 and M 21.0 mL of 0.5 N: NaOH 30.0 g/L, carbonate 15.9 g/L',
    source: neutralisation,
    inputs: { sample: 10 * millilitre, normality: 500, pink: 18 * millilitre, total: 21 * millilitre },
    outputs: { sodiumHydroxide: 30, carbonate: 15.9 },
    tolerance,
    notes: ['TITRATION_FREE_COUNTS', 'CAUTION_CHEMICAL'],
  },
  {
    name: 'P under half of M: no free hydroxide is left',
    source: neutralisation,
    inputs: { sample: 10 * millilitre, normality: 500, pink: 8 * millilitre, total: 18 * millilitre },
    outputs: { sodiumHydroxide: 0 },
    tolerance: { absolute: 1e-9, reason: 'exact' },
    notes: ['TITRATION_NO_CAUSTIC'],
  },
];
