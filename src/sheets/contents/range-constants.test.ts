import { describe, expect, it } from 'vitest';
import { rangeConstants, type SubgroupSize } from './range-constants.ts';

/** n, d2, d3, A2, D3, D4. Computed by another script; A2, D3 and D4 of n = 2 to 5 agree with printed tables (read). */
const table = [
  [2, 1.1284, 0.8525, 1.88, 0, 3.2665],
  [3, 1.6926, 0.8884, 1.0233, 0, 2.5746],
  [4, 2.0588, 0.8798, 0.7286, 0, 2.2821],
  [5, 2.3259, 0.8641, 0.5768, 0, 2.1145],
  [6, 2.5344, 0.848, 0.4832, 0, 2.0038],
  [7, 2.7044, 0.8332, 0.4193, 0.0757, 1.9243],
  [8, 2.8472, 0.8198, 0.3725, 0.1362, 1.8638],
  [9, 2.97, 0.8078, 0.3367, 0.184, 1.816],
  [10, 3.0775, 0.7971, 0.3083, 0.223, 1.777],
  [12, 3.2585, 0.7785, 0.2658, 0.2833, 1.7167],
  [15, 3.4718, 0.7562, 0.2231, 0.3466, 1.6534],
  [20, 3.735, 0.7287, 0.1796, 0.4147, 1.5853],
  [25, 3.9306, 0.7084, 0.1526, 0.4593, 1.5407],
] as const;

describe('constants of the range', () => {
  it.each(table)('of %d values', (n, d2, d3, a2, low, high) => {
    const [mean, deviation] = rangeConstants[String(n) as SubgroupSize];
    expect(Math.abs(mean - d2)).toBeLessThan(6e-5);
    expect(Math.abs(deviation - d3)).toBeLessThan(6e-5);
    expect(Math.abs(3 / (mean * Math.sqrt(n)) - a2)).toBeLessThan(6e-5);
    expect(Math.abs(Math.max(0, 1 - (3 * deviation) / mean) - low)).toBeLessThan(6e-5);
    expect(Math.abs(1 + (3 * deviation) / mean - high)).toBeLessThan(6e-5);
  });

  it('there is one for every size that a chart can be asked for', () => {
    expect(table.map(([n]) => String(n)).sort()).toEqual(Object.keys(rangeConstants).sort());
  });
});
