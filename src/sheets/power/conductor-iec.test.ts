import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ampacityIec } from './ampacity-iec.ts';
import { conductorIec } from './conductor-iec.ts';
import { iecConductors, iecMethods, iecRatedSizes } from './iec-conductors.ts';
import { iecAmbientFactor, iecGroupFactor } from './iec-correction-factors.ts';

const place = fc.record({
  method: fc.constantFrom(...iecMethods),
  ambient: fc.double({ min: 273, max: 328, noNaN: true }),
  circuits: fc.integer({ min: 1, max: 9 }),
});
const carried = (size: string, at: Parameters<typeof conductorIec>[2]): number =>
  ampacityIec(size, at.method, at.ambient, at.circuits)!.allowed;

it('the cable carries the device, and the next smaller one does not', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 240, noNaN: true }), place, (current, at) => {
      const found = conductorIec(current, 'circuit-breaker', at);
      if (found === undefined) return true;
      const smaller = iecRatedSizes[iecRatedSizes.indexOf(found.size) - 1];
      return (
        found.rating >= current * (1 - 1e-9) &&
        carried(found.size, at) >= found.rating * (1 - 1e-9) &&
        (smaller === undefined || carried(smaller, at) < found.rating)
      );
    }),
  );
});

it('a fuse never asks for less than a breaker', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 150, noNaN: true }), place, (current, at) => {
      const fuse = conductorIec(current, 'fuse', at);
      const breaker = conductorIec(current, 'circuit-breaker', at);
      return (
        fuse === undefined ||
        (breaker !== undefined && iecRatedSizes.indexOf(breaker.size) <= iecRatedSizes.indexOf(fuse.size))
      );
    }),
  );
});

it('more metal carries more and resists less, row by row', () => {
  iecConductors.slice(1).forEach((conductor, i) => {
    const smaller = iecConductors[i]!;
    expect(conductor.resistance[0]).toBeLessThan(smaller.resistance[0]);
    conductor.ampacity?.forEach((amperes, method) => {
      expect(amperes).toBeGreaterThan(smaller.ampacity![method]!);
    });
  });
});

it('ambient factors are those of the heat balance to 70 degC, sqrt((70 - ambient)/40), within 0.035', () => {
  for (const celsius of [25, 30, 35, 40, 45, 50, 55]) {
    expect(Math.abs(iecAmbientFactor(celsius + 273.15)! - Math.sqrt((70 - celsius) / 40))).toBeLessThan(
      0.035,
    );
  }
});

it('between two rows the hotter one counts, and beyond the last there is none', () => {
  expect(iecAmbientFactor(309)).toBe(0.87);
  expect(iecAmbientFactor(329)).toBeUndefined();
  expect(iecGroupFactor(2.5)).toBe(0.7);
  expect(iecGroupFactor(10)).toBeUndefined();
});
