import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drainFilling } from './drain-depth.ts';
import { drainFlow, drainVelocity, fillingOfMostFlow } from './part-full-pipe.ts';

it.each([
  // part-full pipe, constant n, independent table: y/D, Q/Qf, V/Vf
  [0.1, 0.0209, 0.4012],
  [0.25, 0.137, 0.7007],
  [0.5, 0.5, 1],
  [0.7, 0.8372, 1.1198],
  [0.85, 1.0304, 1.1374],
  [0.938, 1.0757, 1.104],
])('at a filling of %d a pipe carries %d of full at %d of its velocity', (filling, flow, velocity) => {
  expect(drainFlow(0.1, 0.01, 0.013, filling) / drainFlow(0.1, 0.01, 0.013, 1)).toBeCloseTo(flow, 3);
  expect(drainVelocity(0.1, 0.01, 0.013, filling) / drainVelocity(0.1, 0.01, 0.013, 1)).toBeCloseTo(
    velocity,
    3,
  );
});

it('no filling carries more than 0.938 of the bore', () => {
  const most = drainFlow(0.1, 0.01, 0.013, fillingOfMostFlow);
  for (const near of [-1e-3, 1e-3]) {
    expect(drainFlow(0.1, 0.01, 0.013, fillingOfMostFlow + near)).toBeLessThan(most);
  }
});

it('the depth found carries the flow asked, and it is the lower of two', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (share) => {
      const flow = share * drainFlow(0.15, 0.01, 0.013, fillingOfMostFlow);
      const filling = drainFilling(flow, 0.15, 0.01, 0.013);
      return filling <= fillingOfMostFlow && Math.abs(drainFlow(0.15, 0.01, 0.013, filling) - flow) <= 1e-12;
    }),
  );
});
