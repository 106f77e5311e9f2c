import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { handDistance, handSpeed, slowerFrom, walkingDistance } from './approach.ts';
import { stopTimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { iso13855 } from './sources.ts';

/** m: finest and coarsest resolution of a field that finds a hand, and the coarsest that finds an arm. */
const fingertip = 0.014;
const handResolution = 0.04;
const armResolution = 0.07;
/** m, of an arm through a coarser field. */
const armIntrusion = 0.85;
// a conversion from inches must not push 40 mm off 40 mm
const rounding = 1e-9;

/**
 * How far a hand or an arm reaches through a field before it is found.
 *
 * Method   C = 8 (d - 14), at least 0, up to d = 40; 850 above (mm)
 * Symbols  d  resolution  scalar  m  up to 70 mm
 * Returns  m
 * Cost     O(1)
 * Source   ISO 13855:2010
 */
export const fieldIntrusion = (resolution: number): number =>
  resolution <= handResolution + rounding ? Math.max(0, 8 * (resolution - fingertip)) : armIntrusion;

/**
 * Distance of an upright field before a danger.
 *
 * Method   d <= 40 mm: two steps of `handDistance`; above: S = 1600 T + 850 (mm, s)
 * Symbols  T  time        scalar  s
 *          d  resolution  scalar  m
 * Returns  m
 * Cost     O(1)
 * Source   ISO 13855:2010
 */
export const verticalFieldDistance = (time: number, resolution: number): number =>
  resolution <= handResolution + rounding
    ? handDistance(time, fieldIntrusion(resolution))
    : walkingDistance(time, armIntrusion);

interface VerticalFieldInputs {
  readonly time: number;
  readonly resolution: number;
}

export const verticalFieldDistanceSheet = defineSheet({
  id: 'safety/vertical-field-distance',
  version: 1,
  inputs: {
    time: numberField('time', 'T', stopTimes),
    resolution: numberField('length', 'd', { least: 0.001, most: armResolution }),
  },
  outputs: {
    intrusion: numberField('length', 'C'),
    distance: numberField('length', 'S'),
  },
  formula: [
    'd \\le 40: \\quad C = \\max(0,\\ 8 (d - 14)), \\quad S_1 = \\max(100,\\ 2000\\, T + C)',
    'S = S_1 \\text{ where } S_1 \\le 500, \\text{ else } \\max(500,\\ 1600\\, T + C)',
    '40 < d \\le 70: \\quad C = 850, \\quad S = 1600\\, T + C \\qquad (\\mathrm{mm},\\ \\mathrm{s})',
  ],
  limits: [
    guardingCaution,
    always('DISTANCE_2010'),
    {
      code: 'FIELD_SLOWER_STEP',
      broken: ({ time, resolution }, { intrusion }) =>
        resolution <= handResolution + rounding && handSpeed * time + intrusion > slowerFrom,
    },
    {
      code: 'FIELD_NOT_FOR_HANDS',
      broken: ({ resolution }) => resolution > handResolution + rounding,
    },
    always('DISTANCE_STOP_MEASURED'),
    always('DISTANCE_OTHER_WAYS'),
  ],
  sources: [iso13855],
  compute: ({ time, resolution }: VerticalFieldInputs) => ({
    intrusion: fieldIntrusion(resolution),
    distance: verticalFieldDistance(time, resolution),
  }),
});
