import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codePlaces, type KeyedPoint, type Size } from './code-places.ts';

const label: Size = { width: 60, height: 20 };
const share = fc.double({ min: 0, max: 1, noNaN: true });
const somePoints = (most: number): fc.Arbitrary<readonly KeyedPoint[]> =>
  fc
    .array(fc.record({ x: share, y: share }), { maxLength: most })
    .map((all) => all.map((one, i) => ({ ...one, key: `J-${i}` })));

const boxesOf = (points: readonly KeyedPoint[], picture: Size) =>
  [...codePlaces(points, picture, label)].map(([key, { x, y }]) => ({
    key,
    left: x * picture.width,
    top: y * picture.height,
  }));

/** Shares that were multiplied and divided again. */
const rounding = 1e-6;

const overlapping = (boxes: ReturnType<typeof boxesOf>): readonly string[] =>
  boxes.flatMap((one, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (other) =>
          Math.abs(one.left - other.left) < label.width - rounding &&
          Math.abs(one.top - other.top) < label.height - rounding,
      )
      .map((other) => `${one.key} on ${other.key}`),
  );

describe('codes on a picture', () => {
  it('lie within it, one for each point, whatever the order in which the points came', () => {
    fc.assert(
      fc.property(
        somePoints(40),
        fc.record({ width: fc.integer({ min: 80, max: 900 }), height: fc.integer({ min: 40, max: 900 }) }),
        (points, picture) => {
          const boxes = boxesOf(points, picture);
          expect(boxes.map(({ key }) => key).sort()).toEqual(points.map(({ key }) => key).sort());
          for (const { left, top } of boxes) {
            expect(left).toBeGreaterThanOrEqual(0);
            expect(top).toBeGreaterThanOrEqual(0);
            expect(left + label.width).toBeLessThanOrEqual(picture.width + rounding);
            expect(top + label.height).toBeLessThanOrEqual(picture.height + rounding);
          }
          expect(codePlaces(points.toReversed(), picture, label)).toEqual(codePlaces(points, picture, label));
        },
      ),
    );
  });
  it('of some points anywhere on a phone cover neither each other nor a point', () => {
    const phone = { width: 358, height: 268 };
    fc.assert(
      fc.property(somePoints(6), (points) => {
        const boxes = boxesOf(points, phone);
        expect(overlapping(boxes)).toEqual([]);
        for (const { left, top, key } of boxes) {
          const under = points.filter(
            ({ x, y }) =>
              x * phone.width > left + rounding &&
              x * phone.width < left + label.width - rounding &&
              y * phone.height > top + rounding &&
              y * phone.height < top + label.height - rounding,
          );
          expect([key, under]).toEqual([key, []]);
        }
      }),
    );
  });
  it('of a strip of twenty terminals can all be read', () => {
    const strip = Array.from({ length: 20 }, (_, i) => ({ key: `J-${i}`, x: 0.1 + i * 0.042, y: 0.5 }));
    expect(overlapping(boxesOf(strip, { width: 358, height: 268 }))).toEqual([]);
  });
});
