import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { handDistance, twoHandDistance, usDistance, walkingDistance } from './approach.ts';
import { distances } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { iso13855 } from './sources.ts';

/** Distance by stop time and what is reached in unseen, for each form of a distance. */
const distanceBy = {
  hand: handDistance,
  walking: walkingDistance,
  'two-hand': twoHandDistance,
  us: usDistance,
} as const;

export const distanceForms = Object.keys(distanceBy) as DistanceForm[];
export type DistanceForm = keyof typeof distanceBy;

/** Longer than any field that is mounted allows: at 1600 mm/s 60 m are 38 s. */
const longest = 64;

/**
 * Longest overall stop time that a mounted distance allows.
 *
 * Method   halving between 0 and 64 s for the greatest T with S(T, C) <= S, S the very function of the distance
 * Symbols  S  mounted    scalar  m
 *          C  intrusion  scalar  m  what the sheet of the distance gives
 * Returns  s, to the last bit; nothing where no time is short enough
 * Cost     60 distances
 * Source   bisection
 */
export const longestStopTime = (
  form: DistanceForm,
  mounted: number,
  intrusion: number,
): number | undefined => {
  const distance = distanceBy[form];
  if (distance(0, intrusion) > mounted) return undefined;
  let low = 0;
  let high = longest;
  for (;;) {
    const middle = 0.5 * (low + high);
    if (middle <= low || middle >= high) return low;
    if (distance(middle, intrusion) <= mounted) low = middle;
    else high = middle;
  }
};

interface LongestStopTimeInputs {
  readonly form: DistanceForm;
  readonly mounted: number;
  readonly intrusion: number;
}

export const longestStopTimeSheet = defineSheet({
  id: 'safety/longest-stop-time',
  version: 1,
  inputs: {
    form: choiceField<DistanceForm>('\\text{form}', distanceForms),
    mounted: numberField('length', 'S', distances),
    intrusion: numberField('length', 'C', { least: 0, most: 2 }),
  },
  outputs: { time: numberField('time', 'T_{\\max}') },
  formula: ['T_{\\max} = \\max \\{ T : S(T, C) \\le S \\}'],
  limits: [guardingCaution, always('LONGEST_LEAVES_NOTHING'), always('DISTANCE_OTHER_WAYS')],
  sources: [iso13855],
  check: ({ form, mounted, intrusion }) =>
    longestStopTime(form, mounted, intrusion) === undefined
      ? [
          {
            code: 'MOUNTED_TOO_NEAR',
            path: 'mounted',
            given: mounted,
            allowed: `>= ${Math.ceil(1000 * distanceBy[form](0, intrusion) - 1e-6)} mm`,
          },
        ]
      : [],
  compute: ({ form, mounted, intrusion }: LongestStopTimeInputs) => ({
    time: longestStopTime(form, mounted, intrusion)!,
  }),
});
