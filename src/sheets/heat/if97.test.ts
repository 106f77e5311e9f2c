import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boilingPressure,
  boilingTemperature,
  latentHeat,
  steamEnthalpy,
  steamVolume,
  waterEnthalpy,
  waterVolume,
} from './if97.ts';

/** Nine printed digits: half a unit of the last is at most 5e-9 of the figure. */
const printed = (got: number, expected: number): void =>
  expect(Math.abs(got / expected - 1)).toBeLessThan(5e-9);

describe('verification values of IAPWS R7-97(2012): recalled, and met to every digit by an independent implementation of IF97', () => {
  it.each([
    [300, 3e6, 0.100215168e-2, 0.115331273e6],
    [300, 80e6, 0.971180894e-3, 0.184142828e6],
    [500, 3e6, 0.1202418e-2, 0.975542239e6],
  ])('table 5, region 1: %d K, %d Pa', (T, p, volume, enthalpy) => {
    printed(waterVolume(p, T), volume);
    printed(waterEnthalpy(p, T), enthalpy);
  });
  it.each([
    [300, 3500, 0.394913866e2, 0.254991145e7],
    [700, 3500, 0.923015898e2, 0.333568375e7],
    [700, 30e6, 0.542946619e-2, 0.263149474e7],
  ])('table 15, region 2: %d K, %d Pa', (T, p, volume, enthalpy) => {
    printed(steamVolume(p, T), volume);
    printed(steamEnthalpy(p, T), enthalpy);
  });
  it.each([
    [300, 0.353658941e4],
    [500, 0.263889776e7],
    [600, 0.123443146e8],
  ])('table 35, pressure at %d K', (T, p) => printed(boilingPressure(T), p));
  it.each([
    [0.1e6, 0.372755919e3],
    [1e6, 0.453035632e3],
    [10e6, 0.584149488e3],
  ])('table 36, temperature at %d Pa', (p, T) => printed(boilingTemperature(p), T));
});

it('pressure and temperature of boiling are each other turned round', () => {
  fc.assert(
    fc.property(fc.double({ min: 273.16, max: 623.15, noNaN: true }), (T) => {
      expect(Math.abs(boilingTemperature(boilingPressure(T)) - T)).toBeLessThan(1e-5);
    }),
  );
});

it('hotter water wants less heat to boil away', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 273.16, max: 620, noNaN: true }),
      fc.double({ min: 0.01, max: 3, noNaN: true }),
      (T, step) => {
        expect(latentHeat(T + step)).toBeLessThan(latentHeat(T));
      },
    ),
  );
});
