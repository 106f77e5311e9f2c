import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { routeMargins } from './coldest-point.ts';
import { intakeVolumeFlow } from './compressor-capacity.ts';
import { condensateSheet, condensed, saturatedRatio } from './condensate.ts';
import { neededDewPoint } from './dryer-choice.ts';
import { vapourAtPressure } from './pressure-dew-point.ts';
import { frostOrDewPoint, saturationPressure } from './saturation.ts';

const kelvin = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true }).map((t) => t + 273.15);
const gauge = fc.double({ min: 0, max: 1.2e6, noNaN: true });

it('a dew point taken to another pressure and back is itself', () => {
  fc.assert(
    fc.property(kelvin(-60, 40), gauge, (dewPoint, p) => {
      const there = vapourAtPressure(saturationPressure(dewPoint), p + 101325, 101325);
      const back = vapourAtPressure(saturationPressure(frostOrDewPoint(there)), 101325, p + 101325);
      expect(frostOrDewPoint(back)).toBeCloseTo(dewPoint, 3);
    }),
  );
});

it('the water that came in is what fell out and what is left', () => {
  fc.assert(
    fc.property(
      kelvin(-10, 45),
      fc.double({ min: 0, max: 1, noNaN: true }),
      kelvin(10, 60),
      kelvin(-60, 20),
      (intake, humidity, cooler, dryer) => {
        const run = runSheet(condensateSheet, {
          intakeFlow: 0.05,
          temperature: intake,
          relativeHumidity: humidity,
          pressure: 7e5,
          aftercooler: cooler,
          dryerDewPoint: dryer,
        });
        if (!run.ok) throw new Error('refused');
        const o = run.value.outputs;
        expect(o.condensedInAftercooler + o.leftAfterAftercooler).toBeCloseTo(o.waterIn, 9);
        expect(o.condensedInDryer + o.leftAfterDryer).toBeCloseTo(o.leftAfterAftercooler, 9);
        expect(Math.min(o.condensedInAftercooler, o.condensedInDryer)).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});

it('the short form of technicians, g/h of saturated densities, is within 2 % of the mass balance', () => {
  // q (phi rho_s(t1) - rho_s(t2) (p_a/p_2)(T_2/T_1)): 1 m3/min of 32 degC, 85 % to 40 degC at 7 bar(g)
  const density = (T: number) => saturationPressure(T) / (461.52 * T);
  const short = (0.85 * density(305.15) - density(313.15) * (101325 / 801325) * (313.15 / 305.15)) * 60;
  expect(Math.abs(short / 1.338 - 1)).toBeLessThan(0.02);
});

it('nothing falls out where the wall is not colder than the dew point of the air at its own pressure', () => {
  fc.assert(
    fc.property(kelvin(-40, 20), gauge, kelvin(-40, 40), (dewPoint, p, wall) => {
      const at = p + 101325;
      const [margin] = routeMargins(dewPoint, 8e5, [at], [wall]);
      const w = saturatedRatio(dewPoint, 8e5);
      const water = condensed(1, w, saturatedRatio(wall, at));
      fc.pre(Math.abs(margin!) > 1e-3);
      expect(water > 0).toBe(margin! < 0);
    }),
  );
});

it('a regulator dries: at less pressure the same air has a lower dew point', () => {
  const [before, after] = routeMargins(276.15, 8e5, [8e5, 4e5], [283.15, 283.15]);
  expect(after).toBeGreaterThan(before!);
});

it('higher, hotter or more humid a compressor must take in more', () => {
  const at = (T: number, humidity: number, atmosphere: number) =>
    intakeVolumeFlow(1, T, humidity, atmosphere);
  expect(at(303.15, 0.5, 84556)).toBeGreaterThan(at(303.15, 0.5, 101325));
  expect(at(313.15, 0.5, 101325)).toBeGreaterThan(at(303.15, 0.5, 101325));
  expect(at(303.15, 0.9, 101325)).toBeGreaterThan(at(303.15, 0.5, 101325));
});

it('a dryer must be as dry as the driest of what asks', () => {
  expect(neededDewPoint(283.15, 5, '-', 'none', 'newer')).toBe(278.15);
  expect(neededDewPoint(263.15, 5, '4', 'none', 'newer')).toBe(258.15);
  expect(neededDewPoint(263.15, 5, '1', 'direct', 'newer')).toBeCloseTo(203.15, 9);
});
