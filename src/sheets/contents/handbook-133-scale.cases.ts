import type { SheetCase } from '../sheet-case.ts';
import { handbookText } from './rule-sources.ts';

const exact = { relative: 1e-12, reason: 'exact but for rounding of doubles' } as const;
const scale = { variation: 7.2e-3, division: 1e-3, capacity: 3, load: 0.4, scaleClass: 'III' } as const;

export const handbook133ScaleCases: readonly SheetCase[] = [
  {
    name: 'variation of 7.2 g: the division is at most 1.2 g',
    source: { ...handbookText, place: 'chapter 2, scale for 113 g packages; public transcription' },
    inputs: { ...scale, division: 1.2e-3 },
    outputs: { fitness: 'fits', largestDivision: 1.2e-3, divisions: 2500 },
    tolerance: exact,
  },
  {
    name: 'variation of 7.2 g: 2 g is too coarse',
    source: handbookText,
    inputs: { ...scale, division: 2e-3 },
    outputs: { fitness: 'does not fit' },
    tolerance: exact,
  },
  {
    name: 'a scale of 90 divisions is too coarse whatever the variation',
    source: handbookText,
    inputs: { ...scale, capacity: 0.09 },
    outputs: { fitness: 'does not fit', divisions: 90 },
    tolerance: exact,
  },
  ...(
    [
      ['III', 0.5, 0.5],
      ['III', 0.501, 1],
      ['III', 2, 1],
      ['III', 4, 1.5],
      ['III', 4.001, 2.5],
      ['II', 5, 0.5],
      ['II', 20, 1],
      ['II', 20.001, 1.5],
    ] as const
  ).map(
    ([scaleClass, load, divisions]): SheetCase => ({
      name: `class ${scaleClass}, ${load * 1000} divisions: ${divisions} of a division`,
      source: { ...handbookText, place: 'chapter 2, acceptance tolerances; public transcription' },
      inputs: { ...scale, scaleClass, load },
      outputs: { tolerance: divisions * 1e-3 },
      tolerance: exact,
    }),
  ),
];
