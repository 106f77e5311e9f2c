import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const timeFiguresCases: readonly SheetCase[] = [
  {
    name: '420 of 480 min, a minute each, 400 made, 380 good: 0.875, 0.952381, 0.95 and 0.791667 together',
    source: {
      title: 'overall equipment effectiveness, worked example of a public page',
      place:
        'its counts and times; the four figures computed from them, since the page cuts the product to 0.791',
      mark: 'computed',
    },
    inputs: { planned: 28_800, running: 25_200, perBottle: 60, made: 400, good: 380 },
    outputs: { availability: 0.875, effectiveness: 0.952381, quality: 0.95, product: 0.791667 },
    tolerance: { absolute: 5e-7, reason: 'six printed digits' },
  },
  {
    name: 'more bottles than the planned time of a bottle allows: the planned time was too long',
    source: arithmetic,
    inputs: { planned: 3600, running: 3000, perBottle: 6, made: 550, good: 550 },
    outputs: { availability: 5 / 6, effectiveness: 1.1, quality: 1, product: 11 / 12 },
    tolerance: { relative: 1e-12, reason: 'a product and a division' },
    notes: ['EFFECTIVENESS_OVER_ONE'],
  },
];
