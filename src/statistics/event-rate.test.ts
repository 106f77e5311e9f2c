import { describe, expect, it } from 'vitest';
import { learnt } from './event-rate.ts';

describe('a rate of which more was seen', () => {
  // Gelman and others, Bayesian Data Analysis, 3rd edition, 2.6, deaths in a city (memory)
  it('Gamma(3, 5) with 3 deaths in 2 is 0.86, with 30 in 20 it is 1.32', () => {
    const mean = (seen: { events: number; exposure: number }): number => {
      const { events, exposure } = learnt({ events: 3, exposure: 5 }, seen);
      return events / exposure;
    };
    expect(mean({ events: 3, exposure: 2 })).toBeCloseTo(0.86, 2);
    expect(mean({ events: 30, exposure: 20 })).toBeCloseTo(1.32, 2);
  });
});
