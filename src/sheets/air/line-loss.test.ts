import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { normalDensity } from './dry-air.ts';
import { airPipeLoss, airRun, airViscosity, lineLossSheet } from './line-loss.ts';

const lossOf = (flow: number, length: number, pressure = 7e5) =>
  airPipeLoss(pressure, airRun(normalDensity * flow, 0.02, length, 4.5e-5, 293.15), 293.15);

it('where little is lost it is the loss of a liquid of the mean density', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 0.015, noNaN: true }), (flow) => {
      const run = airRun(normalDensity * flow, 0.02, 10, 4.5e-5, 293.15);
      const loss = airPipeLoss(7e5, run, 293.15);
      const density = (7e5 - 0.5 * loss) / (287.055 * 293.15);
      expect(loss / ((run.resistance * run.massVelocity ** 2) / (2 * density))).toBeCloseTo(1, 2);
    }),
  );
});

it('more air, more pipe or less pressure never lose less', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-4, max: 0.02, noNaN: true }),
      fc.double({ min: 1, max: 100, noNaN: true }),
      (flow, length) => {
        const loss = lossOf(flow, length);
        fc.pre(!Number.isNaN(loss));
        expect(lossOf(0.9 * flow, length)).toBeLessThanOrEqual(loss);
        expect(lossOf(flow, 0.9 * length)).toBeLessThanOrEqual(loss);
        expect(lossOf(flow, length, 8e5)).toBeLessThanOrEqual(loss);
      },
    ),
  );
});

it('two halves of a pipe lose what the whole loses', () => {
  const first = lossOf(0.012, 15);
  const second = lossOf(0.012, 15, 7e5 - first);
  expect((first + second) / lossOf(0.012, 30)).toBeCloseTo(1, 9);
});

it('a pipe that chokes is refused with words', () => {
  const run = runSheet(lineLossSheet, { flow: 1, pressure: 6e5, bore: 0.01, length: 10, roughness: 0 });
  expect(run.ok ? [] : run.problems.map(({ code }) => code)).toEqual(['AIR_PIPE_CHOKES']);
});

it('air at 20 degC has the 18.2 uPa s of handbooks (memory) within 1 %', () => {
  expect(Math.abs(airViscosity(293.15) / 18.2e-6 - 1)).toBeLessThan(0.01);
});
