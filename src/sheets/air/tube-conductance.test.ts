import { describe, expect, it } from 'vitest';
import { normalDensity } from './dry-air.ts';
import { airPipeLoss, airRun } from './line-loss.ts';
import { restrictionFlow } from './restriction-flow.ts';
import { tubeConductance } from './tube-conductance.ts';

/** Velocity heads lost where the air enters and leaves, usual for a tube in fittings. */
const ends = 1.5;

/** The flow that a pipe with friction passes between two pressures, by halving. */
const pipeFlow = (bore: number, length: number, upstream: number, downstream: number): number => {
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const flow = 0.5 * (low + high);
    const run = airRun(normalDensity * flow, bore, length, 1.5e-6, 293.15);
    const loss = airPipeLoss(upstream, { ...run, resistance: run.resistance + ends }, 293.15);
    if (upstream - loss >= downstream) low = flow;
    else high = flow;
  }
  return low;
};

describe('the flow by C and b is within 13 % of that of a pipe with friction', () => {
  it.each([0.0025, 0.004, 0.006, 0.008, 0.01, 0.013])('bore %d m', (bore) => {
    for (const length of [0.3, 1, 2, 5, 10, 20]) {
      const { conductance, criticalRatio } = tubeConductance(bore, length);
      for (const downstream of [0.15e5, 3e5, 5e5, 6e5]) {
        const flow = restrictionFlow(conductance, criticalRatio, 7e5, downstream, 293.15);
        expect(Math.abs(flow / pipeFlow(bore, length, 7e5, downstream) - 1)).toBeLessThan(0.13);
      }
    }
  });
});

it('a longer tube or a narrower one never passes more', () => {
  for (const length of [0, 0.1, 1, 10]) {
    expect(tubeConductance(0.004, length + 0.1).conductance).toBeLessThan(
      tubeConductance(0.004, length).conductance,
    );
    expect(tubeConductance(0.0039, length).conductance).toBeLessThan(
      tubeConductance(0.004, length).conductance,
    );
  }
});
