import type { SheetCase } from '../sheet-case.ts';
import { year } from './bounds.ts';
import { iso13849, iso13849Examples } from './sources.ts';

/** As printed, field by field: category, coverage and lifetime that lie in the classes, level. */
const fields = [
  ['B', 0, 5, 'a'],
  ['B', 0, 20, 'b'],
  ['1', 0, 50, 'c'],
  ['2', 0.6, 5, 'a'],
  ['2', 0.6, 10, 'b'],
  ['2', 0.6, 30, 'c'],
  ['2', 0.9, 5, 'b'],
  ['2', 0.9, 20, 'c'],
  ['2', 0.9, 50, 'd'],
  ['3', 0.6, 5, 'b'],
  ['3', 0.6, 20, 'c'],
  ['3', 0.6, 50, 'd'],
  ['3', 0.9, 5, 'c'],
  ['3', 0.9, 20, 'd'],
  ['3', 0.9, 50, 'd'],
  ['4', 0.99, 50, 'e'],
] as const;
const words = { relative: 1e-9, reason: 'words' } as const;

export const simplifiedLevelCases: readonly SheetCase[] = [
  ...fields.map(([category, coverage, lifetime, level]) => ({
    name: `category ${category}, coverage ${100 * coverage} %, ${lifetime} years: level ${level}`,
    source: { ...iso13849, place: 'table 7; public transcription' },
    inputs: { category, coverage, lifetime: lifetime * year },
    outputs: { level },
    tolerance: words,
    notes: ['CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'],
  })),
  {
    name: 'switch and contactor, 14.3 years: category B, level b',
    source: { ...iso13849Examples, place: 'annex I, example A; public transcription' },
    inputs: { category: 'B', coverage: 0, lifetime: 14.3 * year },
    outputs: { coverageClass: 'none', lifetimeClass: 'medium', level: 'b' },
    tolerance: words,
  },
  {
    name: 'guard with two channels, 20 years, 67.1 %: category 3, level c',
    source: { ...iso13849Examples, place: 'annex I, example B; public transcription' },
    inputs: { category: '3', coverage: 0.671, lifetime: 20 * year },
    outputs: { coverageClass: 'low', lifetimeClass: 'medium', level: 'c' },
    tolerance: words,
  },
];
