import type { SheetCase } from '../sheet-case.ts';

const degree = Math.PI / 180;
const gravity = 9.80665;
const pound = 0.45359237;

const offset = {
  title: 'public page of a lifting engineer on sling loads',
  place: '2000 kg over 1 m, centre 300 mm off the middle, leg at 45 degrees',
  mark: 'read',
} as const;

/** Points from the corner of the first one, the centre of mass so far from them. */
const placed = (first: number, second: number, across: number) => ({
  centreAlong: first,
  centreAcross: across,
  firstAlong: 0,
  apartAlong: first + second,
  firstAcross: 0,
  apartAcross: across,
});

export const slingPlanCases: readonly SheetCase[] = [
  {
    name: '2000 kg, points 1 m apart, centre 300 mm off: legs of 1132 and 825 mm, the steep one pulls 1650 kg',
    source: offset,
    inputs: {
      mass: 2000,
      legs: '2',
      ...placed(0.8, 0.2, 0),
      height: 0.8,
      legCapacity: 3300,
    },
    outputs: {
      tensionMass: 1650,
      secondTension: 1650 * gravity,
      firstLength: 1.132,
      secondLength: 0.825,
      angle: 45 * degree,
      legShare: 0.5,
    },
    tolerance: {
      relative: 1e-3,
      reason: 'the page rounds the angle to 76 degrees and lengths to millimetres',
    },
    notes: ['CAUTION_LIFTING', 'SLING_STEEPER_PULLS', 'SLING_REDUCED'],
  },
  {
    name: '1000 lb on two equal legs at 60 degrees to the horizontal: 577 lb a leg',
    source: {
      title: 'public manual of a rope maker on slings',
      place: '1000 lb on two legs',
      mark: 'read',
    },
    inputs: {
      mass: 1000 * pound,
      legs: '2',
      ...placed(1, 1, 0),
      height: Math.sqrt(3),
      legCapacity: 500 * pound,
    },
    outputs: {
      tensionMass: 577.35 * pound,
      firstTension: 577.35 * pound * gravity,
      secondTension: 577.35 * pound * gravity,
      angle: 60 * degree,
    },
    tolerance: { relative: 1e-3, reason: 'the page multiplies with 1.154' },
    notes: ['SLING_OVER_CAPACITY'],
  },
  {
    name: 'a rigid load on the two legs across its corners, centre on the line between them',
    source: {
      title: 'statics',
      place: 'equilibrium of three forces in space, solved by an independent script',
      mark: 'computed',
    },
    inputs: { mass: 1000, legs: '4', ...placed(0.8, 0.4, 0.6), height: 1.5, legCapacity: 1000 },
    outputs: {
      firstTension: 3928.708823947658,
      firstLength: 1.8027756377319946,
      angle: 56.30993247402022 * degree,
    },
    tolerance: { relative: 1e-9, reason: 'both in double precision' },
    notes: ['SLING_CORNERS'],
  },
];
