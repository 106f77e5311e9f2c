import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { startRate } from './compressor-starts.ts';
import { receiverBand } from './receiver-band.ts';
import { receiverTime, receiverTimeSheet } from './receiver-time.ts';
import { receiverVolume, worstDeficit } from './receiver-volume.ts';

const flow = fc.double({ min: 0, max: 1, noNaN: true });

/** Lowest pressure of a receiver that starts full, minute by minute; it fills no further than full. */
const lowest = (demands: readonly number[], dt: number, supply: number, volume: number, high: number) => {
  let pressure = high;
  let least = high;
  for (let round = 0; round < 3; round++) {
    for (const demand of demands) {
      pressure = Math.min(high, pressure + ((supply - demand) * dt * 1e5) / volume);
      least = Math.min(least, pressure);
    }
  }
  return least;
};

it('a receiver of that volume just keeps the pressure, a smaller one does not', () => {
  fc.assert(
    fc.property(
      fc.array(flow, { minLength: 1, maxLength: 12 }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      (demands, spare) => {
        const supply = demands.reduce((a, b) => a + b, 0) / demands.length + spare;
        const deficit = worstDeficit(demands, 10, supply, 'repeats');
        fc.pre(deficit > 1e-6);
        const volume = receiverVolume(deficit, 2e5, 293.15);
        expect(lowest(demands, 10, supply, volume, 8e5)).toBeGreaterThanOrEqual(6e5 - 1);
        expect(lowest(demands, 10, supply, 0.99 * volume, 8e5)).toBeLessThan(6e5);
      },
    ),
  );
});

it('doubling the pressure band halves the receiver, and it lasts exactly the time it was sized for', () => {
  fc.assert(
    fc.property(flow, fc.double({ min: 1, max: 1e4, noNaN: true }), (demand, time) => {
      fc.pre(demand > 1e-3);
      const volume = receiverBand(time, demand, 0.5 * demand, 2e5, 300);
      expect(receiverBand(time, demand, 0.5 * demand, 4e5, 300)).toBeCloseTo(0.5 * volume, 9);
      expect(receiverTime(volume, 2e5, demand, 0.5 * demand, 300) / time).toBeCloseTo(1, 9);
    }),
  );
});

it('where the compressor keeps up the pressure never falls: refused with words, never a negative time', () => {
  expect(receiverTime(1, 1e5, 0.01, 0.02, 293.15)).toBe(Number.POSITIVE_INFINITY);
  expect(receiverTime(1, 0, 0.01, 0.02, 293.15)).toBe(0);
  const run = runSheet(receiverTimeSheet, { volume: 1, high: 8e5, low: 6e5, demand: 0.01, supply: 0.02 });
  expect(run.ok ? [] : run.problems.map(({ code }) => code)).toEqual(['RECEIVER_NEVER_FALLS']);
  const band = runSheet(receiverTimeSheet, { volume: 1, high: 6e5, low: 8e5, demand: 0.02 });
  expect(band.ok ? [] : band.problems.map(({ code, path }) => [code, path])).toEqual([
    ['RECEIVER_BAND', 'high'],
  ]);
});

it('half load starts most often, and the same above as below it', () => {
  fc.assert(
    fc.property(flow, (x) => {
      expect(startRate(1, 1, x, 1e5)).toBeLessThanOrEqual(startRate(1, 1, 0.5, 1e5) * (1 + 1e-12));
      expect(startRate(1, 1, x, 1e5)).toBeCloseTo(startRate(1, 1, 1 - x, 1e5), 9);
    }),
  );
});

it('a compressor cycle takes the time to fall plus the time to fill', () => {
  for (const x of [0.1, 0.3, 0.8]) {
    const fall = receiverTime(2, 1e5, x, 0, 293.15);
    const fill = receiverTime(2, 1e5, 1 - x, 0, 293.15);
    expect(1 / startRate(2, 1, x, 1e5)).toBeCloseTo(fall + fill, 9);
  }
});
