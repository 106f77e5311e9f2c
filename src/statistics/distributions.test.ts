import { describe, expect, it } from 'vitest';
import { binomialCdf, binomialUpperTail } from './binomial.ts';
import { chiSquaredCdf, chiSquaredQuantile } from './chi-squared.ts';
import { fCdf, fQuantile } from './f-distribution.ts';
import { noncentralTCdf, noncentralTQuantile } from './noncentral-t.ts';
import { normalCdf, normalQuantile } from './normal.ts';
import { studentCdf, studentQuantile } from './student.ts';
import { toleranceFactor } from './tolerance-factor.ts';

/**
 * Worked out with 40 digits by mpmath 1.3 from the incomplete beta and gamma functions and, for the noncentral t,
 * by quadrature of its definition; arguments are the machine numbers as written. Cross-read with scipy 1.17.
 */
const values: Record<string, readonly (readonly [got: number, computed: number])[]> = {
  'share of the normal distribution': [
    [normalCdf(-37), 5.725571222524577e-300],
    [normalCdf(-12.5), 3.732564298877713e-36],
    [normalCdf(-5), 2.866515718791939e-7],
    [normalCdf(-1.96), 0.024997895148220435],
    [normalCdf(-0.1), 0.460172162722971],
    [normalCdf(0.3), 0.6179114221889527],
    [normalCdf(1), 0.8413447460685429],
    [normalCdf(2.5758), 0.9949995762622214],
  ],
  'quantile of the normal distribution': [
    [normalQuantile(1e-300), -37.0470962993612],
    [normalQuantile(1e-20), -9.262340089798407],
    [normalQuantile(1e-6), -4.753424308822899],
    [normalQuantile(0.005), -2.575829303548901],
    [normalQuantile(0.1), -1.2815515655446004],
    [normalQuantile(0.4), -0.2533471031357997],
    [normalQuantile(0.8), 0.8416212335729144],
    [normalQuantile(0.975), 1.9599639845400538],
    [normalQuantile(0.9999), 3.7190164854557084],
  ],
  "Student's quantile": [
    [studentQuantile(0.995, 19), 2.860934606464979],
    [studentQuantile(0.975, 1), 12.706204736174694],
    [studentQuantile(0.975, 9), 2.262157162798205],
    [studentQuantile(0.995, 3.7), 4.8692522532278275],
    [studentQuantile(0.9, 0.5), 10.27032441023451],
    [studentQuantile(0.6, 124), 0.2538913578008116],
    [studentQuantile(0.01, 12.5), -2.6649620013481403],
    [studentQuantile(0.9999999, 4), 73.98575805751054],
    [studentQuantile(0.975, 250000), 1.959973473670135],
  ],
  "Student's share": [
    [studentCdf(-0.01, 3), 0.496324555706426],
    [studentCdf(-2.5, 7.3), 0.019825117332800235],
    [studentCdf(-40, 5), 9.205981085886477e-8],
    [studentCdf(-6, 100000), 9.899647278008813e-10],
  ],
  'quantile of chi-squared': [
    [chiSquaredQuantile(0.05, 19), 10.117013063859044],
    [chiSquaredQuantile(0.025, 49), 31.55491646266713],
    [chiSquaredQuantile(0.975, 49), 70.22241356643453],
    [chiSquaredQuantile(0.000001, 3), 0.00024181048720124283],
    [chiSquaredQuantile(0.99, 0.7), 5.653168218608969],
    [chiSquaredQuantile(0.05, 0.1), 1.1147750963757564e-26],
    [chiSquaredQuantile(0.95, 12345.6), 12605.195009065394],
    [chiSquaredQuantile(0.999999, 8), 42.70091392647789],
  ],
  'quantile of F': [
    [fQuantile(0.95, 4, 20), 2.866081402015658],
    [fQuantile(0.95, 1, 10), 4.964602743730712],
    [fQuantile(0.01, 3.5, 7.25), 0.05157474578994416],
    [fQuantile(0.99, 100, 2), 99.48916280843328],
    [fQuantile(0.5, 2000, 3000), 0.9998888764923332],
    [fQuantile(0.999, 11, 108), 3.1500735406218126],
  ],
  'share of the noncentral t': [
    [noncentralTCdf(1, 3, 2), 0.15734943397003653],
    [noncentralTCdf(-1, 4.5, 0.5), 0.0841020474737152],
    [noncentralTCdf(20, 1, 5), 0.8028285712909452],
    [noncentralTCdf(12, 19, 10.4), 0.7423781870996401],
    [noncentralTCdf(75, 999, 73), 0.8448172491708971],
    [noncentralTCdf(70, 4, 60), 0.5681144067730903],
    [noncentralTCdf(25, 8, 25), 0.4346920885584959],
    [noncentralTCdf(40, 11, 22.5), 0.9818230586983259],
    [noncentralTCdf(0, 8, 1.5), 0.06680720126885807],
  ],
  'tolerance factor': [
    [toleranceFactor(5, 0.9, 0.95), 3.406633262800809],
    [toleranceFactor(20, 0.99, 0.95), 3.295156936170854],
    [toleranceFactor(43, 0.9, 0.99), 1.8739536058511999],
    [toleranceFactor(12, 0.95, 0.99), 3.4099268600756023],
    [toleranceFactor(3, 0.99, 0.99), 23.895563349392766],
    [toleranceFactor(1000, 0.99, 0.95), 2.4301401532416937],
  ],
  'binomial tails': [
    [binomialCdf(3, 50, 0.09), 0.33033710990764564],
    [binomialCdf(7, 125, 0.025), 0.9863836203798736],
    [binomialCdf(0, 1000, 0.005), 0.006653968578831994],
    [binomialUpperTail(3, 50, 0.09), 0.8394595092754898],
    [binomialUpperTail(7, 125, 0.025), 0.038152415311796674],
    [binomialUpperTail(5, 80, 0.0005), 7.281422616918729e-10],
  ],
};

describe('computed with 40 digits, met to 1e-12 of itself', () => {
  it.each(Object.entries(values))('%s', (_, rows) => {
    for (const [got, computed] of rows) {
      expect(Math.abs(got / computed - 1), `${got} for ${computed}`).toBeLessThan(1e-12);
    }
  });
});

describe('printed tables', () => {
  it('UK SI 2006/659, schedule 2: t(0.995, n - 1)/sqrt n is 0.640, 0.503, 0.379 at 20, 30, 50 (read)', () => {
    const printed = [
      [20, 0.64],
      [30, 0.503],
      [50, 0.379],
    ] as const;
    for (const [n, constant] of printed) {
      expect(Math.abs(studentQuantile(0.995, n - 1) / Math.sqrt(n) - constant)).toBeLessThan(5e-4);
    }
  });

  it('Australia, National Trade Measurement Regulations 2009, reg. 4.34: 0.379, 0.295, 0.234 (read)', () => {
    const printed = [
      [50, 0.379],
      [80, 0.295],
      [125, 0.234],
    ] as const;
    for (const [n, constant] of printed) {
      expect(Math.abs(studentQuantile(0.995, n - 1) / Math.sqrt(n) - constant)).toBeLessThan(5e-4);
    }
  });
});

describe('laws', () => {
  it('a quantile is the way back from its share', () => {
    for (const p of [1e-9, 0.003, 0.3, 0.5, 0.77, 0.999]) {
      expect(normalCdf(normalQuantile(p)) / p).toBeCloseTo(1, 12);
      for (const dof of [0.8, 3, 17.5, 400]) {
        expect(studentCdf(studentQuantile(p, dof), dof) / p).toBeCloseTo(1, 12);
        expect(chiSquaredCdf(chiSquaredQuantile(p, dof), dof) / p).toBeCloseTo(1, 12);
        expect(fCdf(fQuantile(p, dof, 6.5), dof, 6.5) / p).toBeCloseTo(1, 12);
        expect(noncentralTCdf(noncentralTQuantile(p, dof, 1.7), dof, 1.7) / p).toBeCloseTo(1, 9);
      }
    }
  });

  it('without end of degrees of freedom Student is normal, F is chi-squared over its degrees', () => {
    expect(studentQuantile(0.975, Infinity)).toBe(normalQuantile(0.975));
    expect(studentQuantile(0.975, 1e15)).toBeCloseTo(normalQuantile(0.975), 9);
    expect(fQuantile(0.9, 7, Infinity)).toBe(chiSquaredQuantile(0.9, 7) / 7);
    expect(noncentralTQuantile(0.9, Infinity, 2)).toBeCloseTo(2 + normalQuantile(0.9), 14);
    expect(fQuantile(0.95, 4, 0.999e9)).toBeCloseTo(fQuantile(0.95, 4, 1.001e9), 7);
  });

  it('a noncentrality of zero is Student', () => {
    for (const dof of [1, 2.5, 30]) {
      for (const t of [-3, 0.2, 8]) {
        expect(noncentralTCdf(t, dof, 0)).toBeCloseTo(studentCdf(t, dof), 13);
      }
    }
  });

  it('either way of the noncentral t gives the same where they meet', () => {
    // 19.999 goes one way, 20.001 the other; the share itself changes by less than the difference of the two
    const [near, far] = [noncentralTQuantile(0.95, 8, 19.999), noncentralTQuantile(0.95, 8, 20.001)];
    const middle = noncentralTQuantile(0.95, 8, 19.997);
    expect(far - near).toBeCloseTo(near - middle, 7);
    expect(noncentralTCdf(-70, 4, -60)).toBeCloseTo(1 - noncentralTCdf(70, 4, 60), 13);
  });

  it('a mean that is known wholly leaves the doubt of the standard deviation alone', () => {
    const known = normalQuantile(0.99) / Math.sqrt(chiSquaredQuantile(0.05, 5) / 5);
    expect(toleranceFactor(1e14, 0.99, 0.95, 5) / known).toBeCloseTo(1, 10);
  });

  it('what is no number comes back as none', () => {
    expect(studentQuantile(0.9, Number.NaN)).toBeNaN();
    expect(chiSquaredCdf(Number.NaN, 3)).toBeNaN();
    expect(noncentralTQuantile(0.9, Number.NaN, 1)).toBeNaN();
  });

  it('both binomial tails with the term between them make one', () => {
    expect(binomialCdf(3, 50, 0.09) + binomialUpperTail(4, 50, 0.09)).toBeCloseTo(1, 14);
    expect(binomialCdf(50, 50, 0.09)).toBe(1);
    expect(binomialCdf(-1, 50, 0.09)).toBe(0);
    expect(binomialUpperTail(0, 50, 0.09)).toBe(1);
    expect(binomialUpperTail(51, 50, 0.09)).toBe(0);
  });

  it('ends and shares outside', () => {
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
    expect(normalQuantile(1.1)).toBeNaN();
    expect(studentQuantile(0.5, 3)).toBe(0);
    expect(studentQuantile(1, 3)).toBe(Infinity);
    expect(chiSquaredQuantile(0, 3)).toBe(0);
    expect(chiSquaredQuantile(-0.1, 3)).toBeNaN();
    expect(noncentralTQuantile(1, 3, 1)).toBeNaN();
  });
});
