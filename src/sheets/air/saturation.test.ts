import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  dewPointOverWater,
  frostOrDewPoint,
  saturationOverIce,
  saturationOverWater,
  saturationPressure,
} from './saturation.ts';

// Sonntag 1990, coefficients from public code files, read: another fit to other data
const sonntagWater = (T: number): number =>
  Math.exp(-6096.9385 / T + 21.2409642 - 2.711193e-2 * T + 1.673952e-5 * T * T + 2.433502 * Math.log(T));
const sonntagIce = (T: number): number =>
  Math.exp(-6024.5282 / T + 29.32707 + 1.0613868e-2 * T - 1.3198825e-5 * T * T - 0.49382577 * Math.log(T));
// WMO/CIMO constants, read
const magnusWater = (T: number): number => 611.2 * Math.exp((17.62 * (T - 273.15)) / (243.12 + T - 273.15));
const magnusIce = (T: number): number => 611.2 * Math.exp((22.46 * (T - 273.15)) / (272.62 + T - 273.15));

const celsius = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true }).map((t) => t + 273.15);

it('over water it is within 0.04 % of Sonntag from 0 to 80 degC, over ice within 0.15 % from -70 to 0', () => {
  fc.assert(
    fc.property(celsius(0, 80), celsius(-70, 0), (water, ice) => {
      expect(Math.abs(saturationOverWater(water) / sonntagWater(water) - 1)).toBeLessThan(4e-4);
      expect(Math.abs(saturationOverIce(ice) / sonntagIce(ice) - 1)).toBeLessThan(1.5e-3);
    }),
  );
});

it('it is within 0.4 % of the Magnus form from -70 to 60 degC', () => {
  fc.assert(
    fc.property(celsius(0, 60), celsius(-70, 0), (water, ice) => {
      expect(Math.abs(saturationOverWater(water) / magnusWater(water) - 1)).toBeLessThan(4e-3);
      expect(Math.abs(saturationOverIce(ice) / magnusIce(ice) - 1)).toBeLessThan(4e-3);
    }),
  );
});

it('over supercooled water it stays within 0.5 % of Sonntag down to -50 degC', () => {
  for (let t = -50; t <= 0; t += 5) {
    expect(Math.abs(saturationOverWater(t + 273.15) / sonntagWater(t + 273.15) - 1)).toBeLessThan(5e-3);
  }
});

it('the dew point of the saturation pressure is the temperature, also across freezing', () => {
  fc.assert(
    fc.property(celsius(-99.9, 199.9), (T) => {
      expect(frostOrDewPoint(saturationPressure(T))).toBeCloseTo(T, 3);
      expect(dewPointOverWater(saturationOverWater(T))).toBeCloseTo(T, 8);
    }),
  );
});

it('air too dry or too hot for the equations has no dew point', () => {
  expect(frostOrDewPoint(1e-3)).toBeNaN();
  expect(frostOrDewPoint(2e6)).toBeNaN();
  expect(dewPointOverWater(1e-9)).toBeNaN();
});

it('ice and water meet at the triple point within the printed 611.657 Pa of IAPWS', () => {
  expect(Math.abs(saturationOverIce(273.16) / 611.657 - 1)).toBeLessThan(4e-4);
  expect(Math.abs(saturationOverWater(273.16) / 611.657 - 1)).toBeLessThan(4e-4);
});
