import type { SheetCase } from '../sheet-case.ts';

const pound = 0.45359237;
const degree = Math.PI / 180;
const chart = {
  title: 'public sling chart',
  place: 'factors by angle to the horizontal',
  mark: 'read',
} as const;
const manual = {
  title: 'public manual of a rope maker on slings',
  place: '1000 lb on two legs; at 45 degrees it prints 500 / 1.414 = 707, a misprint for times',
  mark: 'read',
} as const;
const rows = [
  [90, 1],
  [85, 1.004],
  [80, 1.015],
  [75, 1.035],
  [70, 1.064],
  [65, 1.104],
  [60, 1.155],
  [55, 1.221],
  [50, 1.305],
  [40, 1.555],
  [35, 1.742],
  [30, 2],
] as const;

export const slingLegCases: readonly SheetCase[] = [
  {
    name: '1000 lb on two legs at 60 degrees to the horizontal: 577 lb a leg',
    source: manual,
    inputs: {
      mass: 1000 * pound,
      legs: '2',
      angle: 60 * degree,
      angleFrom: 'horizontal',
      legCapacity: 1000 * pound,
    },
    outputs: { tensionMass: 577.35 * pound, tension: 577.35 * 4.448222, legShare: 0.57735 },
    tolerance: { relative: 1e-3, reason: 'the page multiplies with 1.154' },
    notes: ['CAUTION_LIFTING', 'SLING_ANGLE_WORDS'],
  },
  {
    name: 'the same at 45 degrees: 707.1 lb a leg',
    source: manual,
    inputs: {
      mass: 1000 * pound,
      legs: '2',
      angle: 45 * degree,
      angleFrom: 'vertical',
      legCapacity: 500 * pound,
    },
    outputs: { tensionMass: 707.1 * pound, legShare: 707.1 / 500 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
    notes: ['SLING_OVER_CAPACITY'],
  },
  ...rows.map(([angle, factor]) => ({
    name: `factor at ${angle} degrees to the horizontal: ${factor}`,
    source: chart,
    inputs: { mass: 100, legs: '2', angle: angle * degree, angleFrom: 'horizontal', legCapacity: 200 },
    outputs: { factor },
    tolerance: {
      absolute: 1.5e-3,
      reason: 'the third printed digit; at 35 degrees the chart prints 1.742 for 1.7434',
    },
  })),
  {
    name: 'a rigid load on four legs: two carry it',
    source: { title: 'statics', place: 'hand calculation', mark: 'computed' },
    inputs: { mass: 800, legs: '4', angle: 30 * degree, angleFrom: 'horizontal', legCapacity: 1000 },
    outputs: { tensionMass: 800, legShare: 0.8 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['SLING_RIGID'],
  },
];
