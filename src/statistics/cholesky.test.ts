import { describe, expect, it } from 'vitest';
import { addOuter, cholesky, choleskyInverse, choleskySolve, zeroMatrix } from './cholesky.ts';
import { between, sumOf, traceOf } from './symmetric.ts';

/** Hilbert's matrix: its inverse is known in whole numbers, and no elimination likes it. */
const hilbert = (n: number): Float64Array[] =>
  Array.from({ length: n }, (_, i) => Float64Array.from({ length: n }, (_, j) => 1 / (i + j + 1)));

describe('the factor of a positive definite matrix', () => {
  // the inverse of the Hilbert matrix of order 4, in whole numbers (memory; its product with the matrix is one)
  it('gives the whole numbers of the inverse of Hilbert of order 4', () => {
    const inverse = choleskyInverse(cholesky(hilbert(4))!);
    const known = [
      [16, -120, 240, -140],
      [-120, 1200, -2700, 1680],
      [240, -2700, 6480, -4200],
      [-140, 1680, -4200, 2800],
    ];
    known.forEach((row, i) => {
      row.forEach((entry, j) => {
        expect(inverse[i]![j]! / entry).toBeCloseTo(1, 9);
      });
    });
  });

  it('solves what it was multiplied with', () => {
    const a = hilbert(5);
    const x = [1, -2, 3, 0, 5];
    const b = a.map((row) => row.reduce((sum, entry, j) => sum + entry * x[j]!, 0));
    choleskySolve(cholesky(a)!, b).forEach((value, i) => {
      expect(value).toBeCloseTo(x[i]!, 7);
    });
  });

  it('does not exist where a direction has no weight', () => {
    const flat = zeroMatrix(2);
    addOuter(flat, Float64Array.of(1, 2), 3);
    expect(flat.map((row) => [...row])).toEqual([
      [3, 0],
      [6, 12],
    ]);
    expect(cholesky(flat)).toBeUndefined();
  });
});

describe('a symmetric matrix of which the lower triangle is kept', () => {
  it('between its own inverse is that inverse, and has the trace of one', () => {
    const a = hilbert(3);
    const lower = a.map((row, i) => row.map((entry, j) => (j <= i ? entry : 0)));
    const inverse = choleskyInverse(cholesky(a)!);
    expect(traceOf(inverse, lower)).toBeCloseTo(3, 9);
    between(inverse, lower).forEach((row, i) => {
      row.forEach((entry, j) => {
        expect(entry).toBeCloseTo(inverse[i]![j]!, 8);
      });
    });
    expect(sumOf(lower, lower)[2]![1]).toBe(2 * a[2]![1]!);
  });
});
