import { describe, expect, it } from 'vitest';
import { brentRoot } from '../brent-root.ts';
import { standardGravity } from '../standard-gravity.ts';
import { sharedKv } from './manifold.ts';
import { pipeLoss } from './pipe-loss.ts';
import { valveFlow, valveLoss } from './valve-flow.ts';

/** 20 m of head, 12 m of 32 mm tube with K 4 in common, n valves of Kv 1.2 to the open air; 1 mm2/s. */
const laneFlow = (n: number): number => {
  const head = 20 * 1000 * standardGravity;
  const left = (q: number): number =>
    head - pipeLoss(n * q, 0.032, 12, 1.5e-6, 4, 1000, 1e-3) - valveLoss(1.2, q, 1000);
  return brentRoot(left, 0, 0.001);
};

describe('valves on one line', () => {
  it.each([
    [12, 0.3092, 0.3095],
    [8, 0.3709, 0.3712],
    [4, 0.4341, Math.LOG10E],
    [2, 0.4571, 0.4572],
    [1, 0.4641, 0.4641],
  ])(
    '%i open: independent solution %d L/s within 0.05 %%, EPANET engine %d L/s within 0.3 %%',
    (n, script, engine) => {
      const q = laneFlow(n) * 1000;
      expect(Math.abs(q / script - 1)).toBeLessThan(5e-4);
      expect(Math.abs(q / engine - 1)).toBeLessThan(3e-3);
    },
  );

  it('a valve alone runs 1.501 times as fast as with all twelve open', () => {
    expect(laneFlow(1) / laneFlow(12)).toBeCloseTo(1.501, 3);
  });
});

it('a common line with a tenth of the loss of the valve makes a lane alone at most 5 % faster', () => {
  const lanes = 8;
  const commonKv = (lanes * 1.2) / Math.sqrt(0.1);
  const ratio = sharedKv(1.2, commonKv, 1) / sharedKv(1.2, commonKv, lanes);
  expect(ratio).toBeGreaterThan(1.04);
  expect(ratio).toBeLessThan(1.05);
});

it('flow and loss of a valve are inverse to each other, backward too', () => {
  for (const dp of [-2e5, 0, 3e4, 1e6]) {
    expect(valveLoss(2.5, valveFlow(2.5, dp, 1045), 1045)).toBeCloseTo(dp, 6);
  }
});
