import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waterDensity } from '../water/water-density.ts';
import { airDensity } from './air-density.ts';
import { densityInAir } from './density-in-air.ts';
import { trueDensity } from './true-density.ts';
import { volumeByWeighing } from './volume-by-weighing.ts';

/**
 * Density of air-free water at 101.325 kPa: Tanaka et al., Metrologia 38, 2001, 301 (coefficients read second hand,
 * agreeing in several public files). The volumes here use the IAPWS equation; this is what the other one says.
 */
const tanaka = (t: number): number =>
  999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));

describe('water that is weighed', () => {
  it('is as dense by the equation used here as by that of Tanaka, within 3 millionths from 0 to 40 degC', () => {
    for (let t = 0; t <= 40; t += 1) {
      expect(Math.abs(waterDensity(t + 273.15) / tanaka(t) - 1)).toBeLessThan(3e-6);
    }
  });

  it('takes more volume for each gram in denser air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 1.3, noNaN: true }),
        fc.double({ min: 700, max: 1400, noNaN: true }),
        (air, density) =>
          volumeByWeighing(1, density, air + 0.01, 8000) > volumeByWeighing(1, density, air, 8000),
      ),
    );
  });

  it('weighs its true mass where the air is gone or is buoyed like the weights', () => {
    expect(volumeByWeighing(0.5, 1000, 0, 8000)).toBeCloseTo(0.0005, 15);
    expect(volumeByWeighing(0.5, 2000, 1.2, 2000)).toBeCloseTo(0.00025, 15);
  });

  it('shows a flat 1.2 kg/m3 for the air to shift no volume by more than 0.002 % between 15 and 25 degC', () => {
    for (const celsius of [15, 20, 25]) {
      const air = airDensity(101325, celsius + 273.15, 0.5);
      const density = waterDensity(celsius + 273.15);
      const ratio = volumeByWeighing(1, density, 1.2, 8000) / volumeByWeighing(1, density, air, 8000);
      expect(Math.abs(ratio - 1)).toBeLessThan(2.3e-5);
    }
  });
});

it('net weight over the density by weight in air is the volume that buoyancy gives', () => {
  const weighed = volumeByWeighing(0.75, 1045, 1.19, 8000);
  expect(0.75 / densityInAir(1045, 1.19, 8000)).toBeCloseTo(weighed, 15);
  expect(trueDensity(densityInAir(1045, 1.19, 8000), 1.19, 8000)).toBeCloseTo(1045, 9);
});
