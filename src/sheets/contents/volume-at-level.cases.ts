import type { SheetCase } from '../sheet-case.ts';

export const volumeAtLevelCases: readonly SheetCase[] = [
  {
    name: 'a body of 60 mm to 150 mm, then a neck of 22 mm: the level at 180 mm lies at 435.519 mL',
    source: {
      title: 'geometry',
      place: 'hand calculation: 30 mm x 30 mm x pi x 150 mm + 11 mm x 11 mm x pi x 30 mm',
      mark: 'computed',
    },
    inputs: { heights: [0.15, 0.2], volumes: [424.1150082e-6, 443.1216438e-6], level: 0.18 },
    outputs: { volume: 435.5189896e-6, millimetre: 0.380133e-6 },
    tolerance: { relative: 1e-6, reason: 'printed digits' },
    notes: ['PROFILE_STRAIGHT'],
  },
];
