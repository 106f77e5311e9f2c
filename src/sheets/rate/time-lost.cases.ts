import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const timeLostCases: readonly SheetCase[] = [
  {
    name: '420 of 480 min, a minute each: an eighth is lost, availability 0.875, 60 are not made',
    source: {
      title: 'overall equipment effectiveness, worked example of a public page',
      place: 'its times and its availability; the bottles worked from them',
      mark: 'computed',
    },
    inputs: { duration: 28_800, lost: 3600, setRate: 1 / 60 },
    outputs: { share: 0.125, left: 0.875, bottles: 60 },
    tolerance: { relative: 1e-12, reason: 'one division' },
    notes: ['LOST_AT_SET_RATE'],
  },
  {
    name: '24 min of 8 h at 675/h: a twentieth, 270 bottles',
    source: arithmetic,
    inputs: { duration: 28_800, lost: 1440, setRate: 675 / 3600 },
    outputs: { share: 0.05, left: 0.95, bottles: 270 },
    tolerance: { relative: 1e-12, reason: 'one division' },
  },
];
