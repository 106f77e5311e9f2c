import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { filterLoss, filterLossSheet } from './filter-loss.ts';

/** Loss of a hole of 1 cm2 with a coefficient of 5, by density and velocity of the air as it is. */
const velocityLoss = (flow: number, pressure: number): number => {
  const density = pressure / (287.055 * 293.15);
  const velocity = (flow * 1e5) / pressure / 1e-4;
  return 0.5 * 5 * density * velocity * velocity;
};

it('a filter that is a loss coefficient loses K rho v^2/2 at every flow and pressure', () => {
  const rated = velocityLoss(5e-3, 8e5);
  fc.assert(
    fc.property(
      fc.double({ min: 1e-4, max: 2e-2, noNaN: true }),
      fc.double({ min: 2e5, max: 1.2e6, noNaN: true }),
      (flow, pressure) => {
        expect(filterLoss(rated, 5e-3, 8e5, flow, pressure) / velocityLoss(flow, pressure)).toBeCloseTo(1, 9);
      },
    ),
  );
});

it('a filter that would take everything is refused', () => {
  const run = runSheet(filterLossSheet, {
    flow: 0.05,
    pressure: 6e5,
    filterLoss: 0.2e5,
    filterFlow: 0.005,
    filterPressure: 7e5,
  });
  expect(run.ok ? [] : run.problems.map(({ code, path }) => [code, path])).toEqual([
    ['FILTER_TAKES_ALL', 'pressure'],
  ]);
});
