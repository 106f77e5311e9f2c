import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { restrictionFlow } from './restriction-flow.ts';
import { restrictionLoss, restrictionOutletSheet } from './restriction-outlet.ts';

it('between the two pressures the component passes the flow that was asked for', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 0.6, noNaN: true }),
      fc.double({ min: 1e-9, max: 1e-7, noNaN: true }),
      fc.double({ min: 0.02, max: 0.999, noNaN: true }),
      (b, c, share) => {
        const flow = share * c * 7e5;
        const after = 7e5 - restrictionLoss(c, b, 7e5, flow);
        expect(restrictionFlow(c, b, 7e5, after, 293.15) / flow).toBeCloseTo(1, 6);
      },
    ),
  );
});

it('what chokes is refused at the flow: 601 L/min where 600 are the most', () => {
  const given = { pressure: 4e5, atmosphere: 1e5, conductance: 2e-8, criticalRatio: 0.3 };
  const run = runSheet(restrictionOutletSheet, { ...given, flow: 0.601 / 60 });
  expect(run.ok ? [] : run.problems.map(({ code, path }) => [code, path])).toEqual([
    ['AIR_RESTRICTION_CHOKES', 'flow'],
  ]);
  expect(runSheet(restrictionOutletSheet, { ...given, flow: 0.599 / 60 }).ok).toBe(true);
});

it('nothing is lost at rest, and more flow never loses less', () => {
  expect(restrictionLoss(2e-8, 0.3, 5e5, 0)).toBe(0);
  let last = 0;
  for (let flow = 0; flow < 1e-2; flow += 1e-4) {
    const loss = restrictionLoss(2e-8, 0.3, 5e5, flow);
    expect(loss).toBeGreaterThanOrEqual(last);
    last = loss;
  }
});
