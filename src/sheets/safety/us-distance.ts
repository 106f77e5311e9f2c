import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { usDistance } from './approach.ts';
import { distances, stopTimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';

interface UsDistanceInputs {
  readonly time: number;
  readonly penetration: number;
}

export const usDistanceSheet = defineSheet({
  id: 'safety/us-distance',
  version: 1,
  inputs: {
    time: numberField('time', 'T_s', stopTimes),
    penetration: numberField('length', 'D_{pf}', { ...distances, assumed: 0 }),
  },
  outputs: { distance: numberField('length', 'D_s') },
  formula: ['D_s = 63\\ \\tfrac{\\mathrm{in}}{\\mathrm{s}}\\ T_s + D_{pf}'],
  limits: [
    guardingCaution,
    always('US_FOR_PRESSES'),
    { code: 'US_NO_PENETRATION', broken: ({ penetration }) => penetration === 0 },
    always('DISTANCE_STOP_MEASURED'),
    always('DISTANCE_OTHER_WAYS'),
  ],
  sources: [
    {
      title: '29 CFR 1910.217(c)(3)(iii)(e), hand-speed constant 63 in/s',
      place: 'quoted on a public page',
      mark: 'read',
    },
    {
      title: 'public catalogue of a maker of guarding components',
      place: 'D = 63 T + depth penetration, example',
      mark: 'read',
    },
  ],
  compute: ({ time, penetration }: UsDistanceInputs) => ({ distance: usDistance(time, penetration) }),
});
