import fc from 'fast-check';
import { expect, it } from 'vitest';
import { standardRating } from './standard-device.ts';
import { ratingLists, standardRatings } from './standard-ratings.ts';

const current = fc.double({ min: 0.1, max: 7000, noNaN: true });

it('the rating rounded up carries the current, and the next smaller one does not', () => {
  fc.assert(
    fc.property(current, fc.constantFrom(...ratingLists), (amperes, list) => {
      const rating = standardRating(amperes, list, 'up');
      const smaller = standardRatings[list].findLast((each) => each < (rating ?? Number.POSITIVE_INFINITY));
      return (
        (rating === undefined || rating >= amperes * (1 - 1e-9)) &&
        (smaller === undefined || smaller < amperes)
      );
    }),
  );
});

it('the rating rounded down is within the limit, and the next larger one is not', () => {
  fc.assert(
    fc.property(current, fc.constantFrom(...ratingLists), (amperes, list) => {
      const rating = standardRating(amperes, list, 'down');
      const larger = standardRatings[list].find((each) => each > (rating ?? 0));
      return (
        (rating === undefined || rating <= amperes * (1 + 1e-9)) && (larger === undefined || larger > amperes)
      );
    }),
  );
});

it('a standard rating stays itself, also where it is a product', () => {
  for (const list of ratingLists) {
    for (const rating of standardRatings[list]) {
      expect(standardRating((rating / 3) * 3, list, 'up')).toBe(rating);
      expect(standardRating(rating * 1.1 * (1 / 1.1), list, 'down')).toBe(rating);
    }
  }
});

it('beyond the list there is no rating', () => {
  expect(standardRating(6001, 'us-breaker', 'up')).toBeUndefined();
  expect(standardRating(251, 'iec', 'up')).toBeUndefined();
  expect(standardRating(14, 'us-breaker', 'down')).toBeUndefined();
});
