import type { SheetCase } from '../sheet-case.ts';
import { year } from './bounds.ts';
import { iso13849Examples, referenceCases } from './sources.ts';

const years = (...lifetimes: readonly number[]) => lifetimes.map((lifetime) => lifetime * year);
/** Board of annex D: 2, 5 and 4 parts, four relays of B10d 20e6 and a contactor of 2e6 at 633 600 a year. */
const board = {
  parts: years(1142, 22_831, 11_416, 20e6 / 63_360, 2e6 / 63_360),
  numbers: [2, 5, 4, 4, 1],
};

export const channelLifetimeCases: readonly SheetCase[] = [
  {
    name: 'board with relays and a contactor: 21.4 years',
    source: { ...iso13849Examples, place: 'annex D, parts of a board; public transcription' },
    inputs: board,
    outputs: { lifetime: 21.4 * year, counted: 21.4 * year },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
    notes: ['CAUTION_GUARDING', 'CHANNEL_WEAR_REPLACED'],
  },
  {
    name: 'the same closer: 21.426 years',
    source: referenceCases,
    inputs: board,
    outputs: { lifetime: 21.426 * year },
    tolerance: { relative: 3e-5, reason: 'five digits' },
  },
  {
    name: 'switch of 20 and contactor of 50 years: 14.3 years',
    source: { ...iso13849Examples, place: 'annex I, example A; public transcription' },
    inputs: { parts: years(20, 50), numbers: [1, 1] },
    outputs: { lifetime: 14.3 * year },
    tolerance: { relative: 2e-3, reason: 'three printed digits' },
  },
  {
    name: 'three parts of 20 years: 6.7 years',
    source: { ...iso13849Examples, place: 'annex I, example B, second channel; public transcription' },
    inputs: { parts: years(20), numbers: [3] },
    outputs: { lifetime: 6.7 * year },
    tolerance: { relative: 6e-3, reason: 'two printed digits' },
  },
  {
    name: 'a channel of 500 years counts as 100',
    source: { ...iso13849Examples, place: 'each channel is capped at 100 years; public transcription' },
    inputs: { parts: years(1000), numbers: [2] },
    outputs: { lifetime: 500 * year, counted: 100 * year },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
    notes: ['CHANNEL_CAPPED'],
  },
];
