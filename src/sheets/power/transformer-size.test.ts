import fc from 'fast-check';
import { it } from 'vitest';
import { transformerSize } from './transformer-size.ts';
import { transformerLists, transformerSizes } from './transformer-sizes.ts';

it('the size carries what is needed, and the next smaller one does not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      fc.constantFrom(...transformerLists),
      (current, spare, list) => {
        const { needed, size } = transformerSize(400, current, spare, list);
        const smaller = transformerSizes[list].findLast((each) => each < (size ?? Number.POSITIVE_INFINITY));
        return (
          (size === undefined || size >= needed * (1 - 1e-9)) && (smaller === undefined || smaller < needed)
        );
      },
    ),
  );
});
