import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { walkingDistance } from './approach.ts';
import { stopTimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { addedDistance, type Edition, editionField, editionLimits } from './edition.ts';
import { iso13855, iso13855Draft } from './sources.ts';

/** m: an arm's reach over a field on the floor, what it is at least, and how high a field may lie. */
const reach = 1.2;
const leastReach = 0.85;
const highest = 1;
/** Share by which a raised field shortens the reach, 2010. */
const byHeight = 0.4;
/** m: where a person may creep under, by edition. */
const creptUnder: Readonly<Record<Edition, number>> = { '2010': 0.3, '2024': 0.2 };

/**
 * How far an arm reaches over a field that lies along the way in.
 *
 * Method   2010: C = 1200 - 0.4 H, at least 850; 2024: 1200 (mm)
 * Symbols  H  height  scalar  m over the floor
 * Returns  m
 * Cost     O(1)
 * Source   2010: public manuals of light curtains, the 850 from memory; 2024: public account
 */
export const parallelIntrusion = (height: number, edition: Edition): number =>
  edition === '2010' ? Math.max(leastReach, reach - byHeight * height) : reach;

/**
 * Least height at which a field of a resolution still finds a foot.
 *
 * Method   H = 15 (d - 50), at least 0 (mm)
 * Symbols  d  resolution  scalar  m
 * Returns  m
 * Cost     O(1)
 * Source   ISO 13855:2010
 */
export const leastFieldHeight = (resolution: number): number => Math.max(0, 15 * (resolution - 0.05));

interface ParallelFieldInputs {
  readonly time: number;
  readonly height: number;
  readonly resolution: number;
  readonly edition: Edition;
  readonly added: number;
}

export const parallelFieldDistanceSheet = defineSheet({
  id: 'safety/parallel-field-distance',
  version: 1,
  inputs: {
    time: numberField('time', 'T', stopTimes),
    height: numberField('length', 'H', { least: 0, most: highest }),
    resolution: numberField('length', 'd', { least: 0.001, most: 0.12 }),
    edition: editionField,
    added: addedDistance,
  },
  outputs: {
    leastHeight: numberField('length', 'H_{\\min}'),
    intrusion: numberField('length', 'C'),
    distance: numberField('length', 'S'),
  },
  formula: [
    'S = 1600\\, T + C + Z, \\quad C = \\max(850,\\ 1200 - 0.4 H) \\ (2010), \\quad C = 1200 \\ (2024)',
    'H \\ge H_{\\min} = \\max(0,\\ 15 (d - 50)), \\quad H \\le 1000 \\qquad (\\mathrm{mm},\\ \\mathrm{s})',
  ],
  limits: [
    guardingCaution,
    ...editionLimits,
    { code: 'FIELD_CREPT_UNDER', broken: ({ height, edition }) => height > creptUnder[edition] },
    always('DISTANCE_STOP_MEASURED'),
    always('DISTANCE_OTHER_WAYS'),
  ],
  sources: [
    iso13855,
    iso13855Draft,
    {
      title: 'ISO 13855',
      edition: '2010',
      place: 'C at least 850 mm; creeping under from 300 mm',
      mark: 'memory',
    },
  ],
  check: ({ height, resolution }) =>
    // a conversion from inches must not lower a field
    height >= leastFieldHeight(resolution) - 1e-9
      ? []
      : [
          {
            code: 'FIELD_TOO_LOW',
            path: 'height',
            given: height,
            allowed: `>= ${Math.ceil(1000 * leastFieldHeight(resolution) - 1e-6)} mm`,
          },
        ],
  compute: ({ time, height, resolution, edition, added }: ParallelFieldInputs) => {
    const intrusion = parallelIntrusion(height, edition);
    return {
      leastHeight: leastFieldHeight(resolution),
      intrusion,
      distance: walkingDistance(time, intrusion) + added,
    };
  },
});
