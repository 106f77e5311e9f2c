import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { someCurrents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { standardRating } from './standard-device.ts';
import { necRatingsTable } from './standard-ratings.ts';

export type TransformerSide = 'primary-alone' | 'primary-with-secondary' | 'secondary';

/** Below these rated currents larger shares are allowed. */
const smallCurrent = 9;
const verySmallCurrent = 2;

/** Share of the rated current, and whether the next standard rating up is allowed. */
const rule = (current: number, side: TransformerSide): { readonly share: number; readonly up: boolean } => {
  if (side === 'primary-with-secondary') return { share: 2.5, up: false };
  if (current >= smallCurrent) return { share: 1.25, up: true };
  if (side === 'primary-alone' && current < verySmallCurrent) return { share: 3, up: false };
  return { share: 1.67, up: false };
};

/**
 * Greatest device at a transformer up to 1000 V, US rules.
 *
 * Method   125 % and the next rating up from 9 A on; under 9 A 167 %, under 2 A (primary alone) 300 %;
 *          primary with a secondary device: 250 %; the last three are rounded down
 * Symbols  current  scalar  A, rated current of that side
 * Returns  share, limit, rating; undefined beyond the list
 * Cost     O(ratings)
 * Source   NEC 450.3(B), read in part, the rest from memory
 */
export const transformerDeviceUs = (
  current: number,
  side: TransformerSide,
): { readonly share: number; readonly limit: number; readonly rating: number } | undefined => {
  const { share, up } = rule(current, side);
  const limit = share * current;
  const rating = standardRating(limit, 'us-fuse', up ? 'up' : 'down');
  return rating === undefined ? undefined : { share, limit, rating };
};

interface TransformerDeviceUsInputs {
  readonly current: number;
  readonly side: TransformerSide;
}

export const transformerDeviceUsSheet = defineSheet({
  id: 'power/transformer-device-us',
  version: 1,
  inputs: {
    current: numberField('current', 'I_r', someCurrents),
    side: choiceField<TransformerSide>('\\text{side}', [
      'primary-alone',
      'primary-with-secondary',
      'secondary',
    ]),
  },
  outputs: {
    share: numberField('ratio', 's'),
    limit: numberField('current', 'I_{\\max}'),
    rating: numberField('current', 'I_n'),
  },
  formula: [
    'I_{\\max} = s\\, I_r, \\quad s = 1.25 \\ (I_r \\ge 9\\,\\mathrm{A}),\\ 1.67,\\ 3 \\text{ or } 2.5',
    'I_n = \\text{standard rating next to } I_{\\max}',
  ],
  limits: [
    caution,
    always('NEC_450_3'),
    always('NEC_240_6'),
    { code: 'ROUNDED_UP', broken: (_, { limit, rating }) => rating > limit * (1 + 1e-9) },
  ],
  sources: [
    {
      title: 'NEC 450.3(B)',
      edition: '2008',
      place: '125 % with the next rating up, public discussion; the other shares from memory',
      mark: 'read',
    },
  ],
  check: ({ current, side }) =>
    transformerDeviceUs(current, side) === undefined
      ? [beyondTable('current', current, '1 A to 6000 A', necRatingsTable)]
      : [],
  compute: (i: TransformerDeviceUsInputs) => transformerDeviceUs(i.current, i.side)!,
});
