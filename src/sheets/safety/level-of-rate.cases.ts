import type { SheetCase } from '../sheet-case.ts';
import { hour } from './bounds.ts';

const bands = {
  title: 'ISO 13849-1 table 3',
  edition: '2006',
  place: 'public transcription; the same bands in the manual of a temperature limiter, table 14',
  mark: 'read',
} as const;
/** Both edges of each band, 1/h: the lower belongs to it, the upper to the worse one. */
const edges = [
  ['a', 1e-5],
  ['a', 9.99e-5],
  ['b', 3e-6],
  ['b', 9.99e-6],
  ['c', 1e-6],
  ['c', 2.99e-6],
  ['d', 1e-7],
  ['d', 9.99e-7],
  ['e', 1e-8],
  ['e', 9.99e-8],
] as const;
const words = { relative: 1e-9, reason: 'words' } as const;

export const levelOfRateCases: readonly SheetCase[] = [
  ...edges.map(([level, rate]) => ({
    name: `${rate.toExponential()} in an hour: level ${level}`,
    source: bands,
    inputs: { rate: rate / hour },
    outputs: { level },
    tolerance: words,
    notes: ['CAUTION_GUARDING', 'LEVEL_NOT_NUMBER_ALONE'],
  })),
  {
    name: 'below the bands it counts as e',
    source: { title: 'ISO 13849-1', edition: '2006', place: 'below 1e-8 in an hour', mark: 'memory' },
    inputs: { rate: 1e-9 / hour },
    outputs: { level: 'e' },
    tolerance: words,
    notes: ['LEVEL_BELOW_BANDS'],
  },
];
