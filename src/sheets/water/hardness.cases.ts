import type { SheetCase } from '../sheet-case.ts';

const byDefinition = {
  title: 'definitions of the degrees with atomic weights, grain and gallons',
  place: 'hand calculation',
  mark: 'computed',
} as const;

export const hardnessCases: readonly SheetCase[] = [
  {
    name: '3 mmol/L of calcium are 300.26 mg/L: 16.82 German, 30.03 French, 21.07 English degrees, 17.54 gpg',
    source: byDefinition,
    inputs: { hardness: 0.300258 },
    outputs: {
      asCarbonate: 0.300258,
      millimoles: 3,
      germanDegrees: 16.823,
      frenchDegrees: 30.0258,
      englishDegrees: 21.065,
      grainsPerUsGallon: 17.5404,
    },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: ['HARDNESS_SCALE'],
  },
  {
    name: 'a grain in a US gallon is 17.1 mg/L; 10 of them are 171 mg/L: hard',
    source: {
      title: 'water treatment trade, 17.1 mg/L to the grain',
      place: 'conversion; class of the US survey',
      mark: 'memory',
    },
    inputs: { hardness: 0.171 },
    outputs: { grainsPerUsGallon: 10, hardnessClass: 'hard' },
    tolerance: { relative: 2e-3, reason: 'three printed digits' },
  },
];
