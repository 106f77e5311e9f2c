import type { SheetCase } from '../sheet-case.ts';
import { byHand } from './sources.ts';

const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const longestStopTimeCases: readonly SheetCase[] = [
  {
    name: '512 mm before a field of 14 mm: 320 ms, the example of the distance turned round',
    source: {
      title: 'public manual of a light curtain, ISO 13855',
      place: 'example: 290 + 20 + 10 ms give 512 mm',
      mark: 'read',
    },
    inputs: { form: 'hand', mounted: 0.512, intrusion: 0 },
    outputs: { time: 0.32 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING', 'LONGEST_LEAVES_NOTHING'],
  },
  {
    name: '330 mm before a field of 14 mm: 165 ms',
    source: {
      title: 'public page on the distance of light curtains, ISO 13855',
      place: 'example',
      mark: 'read',
    },
    inputs: { form: 'hand', mounted: 0.33, intrusion: 0 },
    outputs: { time: 0.165 },
    tolerance: exact,
  },
  {
    name: '500 mm hold from 250 to 312.5 ms: the longer',
    source: { ...byHand, place: '500/1600, second step of ISO 13855:2010' },
    inputs: { form: 'hand', mounted: 0.5, intrusion: 0 },
    outputs: { time: 0.3125 },
    tolerance: exact,
  },
  {
    name: 'a guard 660 mm off with 100 mm reached through: 350 ms',
    source: byHand,
    inputs: { form: 'walking', mounted: 0.66, intrusion: 0.1 },
    outputs: { time: 0.35 },
    tolerance: exact,
  },
  {
    name: 'two hands at 100 mm, shrouded: 62.5 ms',
    source: byHand,
    inputs: { form: 'two-hand', mounted: 0.1, intrusion: 0 },
    outputs: { time: 0.0625 },
    tolerance: exact,
  },
  {
    name: '63 inches by the US form: a second',
    source: {
      title: '29 CFR 1910.217(c)(3)(iii)(e)',
      place: 'constant, quoted on a public page',
      mark: 'read',
    },
    inputs: { form: 'us', mounted: 63 * 0.0254, intrusion: 0 },
    outputs: { time: 1 },
    tolerance: exact,
  },
];
