import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const neutralisingAcidCases: readonly SheetCase[] = [
  {
    name: '400 L of 2 % caustic: 200 mol, 9.8 kg of sulfuric acid',
    source: arithmetic,
    inputs: { volume: 0.4, caustic: 20, acid: 'sulfuric', strength: 0.96 },
    outputs: { causticMass: 8, pureAcid: 9.8, product: 10.21 },
    tolerance: { relative: 2e-3, reason: 'two printed digits' },
    notes: ['CAUTION_CHEMICAL', 'CAUSTIC_WASTE', 'ACID_NO_CHLORINE'],
  },
  {
    name: 'the same with carbon dioxide to bicarbonate: 8.8 kg',
    source: arithmetic,
    inputs: { volume: 0.4, caustic: 20, acid: 'carbon dioxide' },
    outputs: { pureAcid: 8.8 },
    tolerance: { relative: 2e-3, reason: 'two printed digits' },
  },
  {
    name: 'pH 12.5 is only 1.265 g/L of caustic',
    source: {
      title: 'pH of a strong base, 14 + log10(c/40 000)',
      place: 'hand calculation',
      mark: 'computed',
    },
    inputs: { volume: 1, caustic: 1.265, acid: 'hydrochloric' },
    outputs: { acidity: 12.5, wasteConcentration: 1.265 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
];
