import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { walkingDistance } from './approach.ts';
import { stopTimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { iso13855 } from './sources.ts';

export const beamCounts = ['1', '2', '3', '4'] as const;
export type BeamCount = (typeof beamCounts)[number];

interface Beams {
  /** m: how far an arm reaches past. */
  readonly intrusion: number;
  /** m over the floor. */
  readonly heights: readonly number[];
}

/** ISO 13855:2010, public guide, read; the height of a single beam from memory. */
const beams: Readonly<Record<BeamCount, Beams>> = {
  '1': { intrusion: 1.2, heights: [0.75] },
  '2': { intrusion: 0.85, heights: [0.4, 0.9] },
  '3': { intrusion: 0.85, heights: [0.3, 0.7, 1.1] },
  '4': { intrusion: 0.85, heights: [0.3, 0.6, 0.9, 1.2] },
};

/**
 * Distance of separate beams that find a body.
 *
 * Method   S = 1600 T + C, C 850 behind two or more beams, 1200 behind one (mm, s)
 * Symbols  T  time   scalar  s
 *          n  count  1 to 4
 * Returns  m
 * Cost     O(1)
 * Source   ISO 13855:2010
 */
export const beamDistance = (time: number, count: BeamCount): number =>
  walkingDistance(time, beams[count].intrusion);

interface BeamInputs {
  readonly time: number;
  readonly count: BeamCount;
}

export const beamDistanceSheet = defineSheet({
  id: 'safety/beam-distance',
  version: 1,
  inputs: {
    time: numberField('time', 'T', stopTimes),
    count: choiceField<BeamCount>('n', beamCounts),
  },
  outputs: {
    intrusion: numberField('length', 'C'),
    distance: numberField('length', 'S'),
    heights: listField('length', 'h'),
  },
  formula: [
    'S = 1600\\, T + C, \\quad C = 850 \\text{ for } n \\ge 2, \\ 1200 \\text{ for } n = 1 \\qquad (\\mathrm{mm},\\ \\mathrm{s})',
  ],
  limits: [
    guardingCaution,
    always('DISTANCE_2010'),
    { code: 'BEAM_SINGLE', broken: ({ count }) => count === '1' },
    always('DISTANCE_STOP_MEASURED'),
    always('DISTANCE_OTHER_WAYS'),
  ],
  sources: [iso13855],
  compute: ({ time, count }: BeamInputs) => ({
    intrusion: beams[count].intrusion,
    distance: beamDistance(time, count),
    heights: beams[count].heights,
  }),
});
