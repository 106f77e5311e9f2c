import { year } from './bounds.ts';

/** Classes of ISO 13849-1:2006, tables 5 and 6. */
export const coverageClasses = ['none', 'low', 'medium', 'high'] as const;
export type CoverageClass = (typeof coverageClasses)[number];
export const lifetimeClasses = ['low', 'medium', 'high'] as const;
export type LifetimeClass = (typeof lifetimeClasses)[number];

export const categories = ['B', '1', '2', '3', '4'] as const;
export type Category = (typeof categories)[number];

/** Shortest that a channel may have. */
export const leastLifetime = 3 * year;
// years from hours or from days leave a last bit
const rounding = 1 - 1e-9;
export const reaches = (value: number, edge: number): boolean => value >= edge * rounding;

export const coverageClass = (coverage: number): CoverageClass =>
  reaches(coverage, 0.99)
    ? 'high'
    : reaches(coverage, 0.9)
      ? 'medium'
      : reaches(coverage, 0.6)
        ? 'low'
        : 'none';

export const lifetimeClass = (lifetime: number): LifetimeClass =>
  reaches(lifetime, 30 * year) ? 'high' : reaches(lifetime, 10 * year) ? 'medium' : 'low';
