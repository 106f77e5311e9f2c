import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { someCurrents } from './bounds.ts';
import { always, caution } from './caution.ts';
import {
  iecRatingsTable,
  necRatingsTable,
  type RatingList,
  ratingLists,
  standardRatings,
} from './standard-ratings.ts';

export type Rounding = 'up' | 'down';

/** A product such as 1.25 x 52 is 65 to a person, whatever the last bit says. */
const sameRating = 1e-9;

/**
 * Standard rating of a protective device next to a current.
 *
 * Method   up: smallest rating >= I; down: greatest rating <= I; a standard rating is itself
 * Symbols  current  scalar  A
 * Returns  A; undefined beyond the ends of the list
 * Cost     O(ratings)
 * Source   NEC 240.6(A); IEC list from memory
 */
export const standardRating = (current: number, list: RatingList, rounding: Rounding): number | undefined =>
  rounding === 'up'
    ? standardRatings[list].find((rating) => rating >= current * (1 - sameRating))
    : standardRatings[list].findLast((rating) => rating <= current * (1 + sameRating));

interface StandardDeviceInputs {
  readonly current: number;
  readonly list: RatingList;
  readonly rounding: Rounding;
}

export const standardDeviceSheet = defineSheet({
  id: 'power/standard-device',
  version: 1,
  inputs: {
    current: numberField('current', 'I', someCurrents),
    list: choiceField<RatingList>('\\text{list}', ratingLists),
    rounding: choiceField<Rounding>('\\text{rounding}', ['up', 'down']),
  },
  outputs: { rating: numberField('current', 'I_n') },
  formula: [
    'I_n = \\min \\{ r \\ge I \\} \\text{ rounded up}, \\quad I_n = \\max \\{ r \\le I \\} \\text{ rounded down}',
  ],
  limits: [
    caution,
    { code: 'NEC_240_6', broken: ({ list }) => list !== 'iec' },
    { code: 'IEC_RATINGS_FROM_MEMORY', broken: ({ list }) => list === 'iec' },
    always('ROUNDING_BY_RULE'),
  ],
  sources: [necRatingsTable, iecRatingsTable],
  check: ({ current, list, rounding }) =>
    standardRating(current, list, rounding) === undefined
      ? [
          beyondTable(
            'current',
            current,
            `${standardRatings[list][0]} A to ${standardRatings[list].at(-1)} A`,
            list === 'iec' ? iecRatingsTable : necRatingsTable,
          ),
        ]
      : [],
  compute: (i: StandardDeviceInputs) => ({ rating: standardRating(i.current, i.list, i.rounding)! }),
});
