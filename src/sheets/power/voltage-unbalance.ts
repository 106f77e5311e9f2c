import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { voltages } from './bounds.ts';
import { caution } from './caution.ts';

const mean = (one: number, two: number, three: number): number => (one + two + three) / 3;

/**
 * Unbalance of three line-to-line readings, the NEMA way.
 *
 * Method   max |U_i - U_mean| / U_mean; not (max - min)/mean, which is up to twice as much
 * Symbols  three readings, V line to line
 * Returns  ratio
 * Cost     O(1)
 * Source   NEMA MG 1
 */
export const nemaUnbalance = (one: number, two: number, three: number): number => {
  const average = mean(one, two, three);
  return Math.max(...[one, two, three].map((each) => Math.abs(each - average))) / average;
};

/**
 * Unbalance of three line-to-line readings, the IEC way: negative over positive sequence.
 *
 * Method   b = sum U^4/(sum U^2)^2; sqrt((1 - sqrt(3 - 6 b))/(1 + sqrt(3 - 6 b)))
 * Symbols  three readings, V line to line, that close a triangle
 * Returns  ratio
 * Cost     O(1)
 * Source   IEC 61000-4-30
 */
export const sequenceUnbalance = (one: number, two: number, three: number): number => {
  const squares = one ** 2 + two ** 2 + three ** 2;
  const beta = (one ** 4 + two ** 4 + three ** 4) / squares ** 2;
  // three equal readings give 1 and a rounding, a flat triangle 0 and one
  const root = Math.sqrt(Math.min(1, Math.max(0, 3 - 6 * beta)));
  return Math.sqrt((1 - root) / (1 + root));
};

interface VoltageUnbalanceInputs {
  readonly first: number;
  readonly second: number;
  readonly third: number;
}

const triangle = ({ first, second, third }: VoltageUnbalanceInputs): boolean =>
  2 * Math.max(first, second, third) <= first + second + third;

export const voltageUnbalanceSheet = defineSheet({
  id: 'power/voltage-unbalance',
  version: 1,
  inputs: {
    first: numberField('voltage', 'U_{12}', voltages),
    second: numberField('voltage', 'U_{23}', voltages),
    third: numberField('voltage', 'U_{31}', voltages),
  },
  outputs: {
    mean: numberField('voltage', '\\bar{U}'),
    nema: numberField('ratio', 'u_{\\mathrm{NEMA}}'),
    sequence: numberField('ratio', 'u_2'),
    lowestCurrent: numberField('ratio', 'i_{\\min}'),
    highestCurrent: numberField('ratio', 'i_{\\max}'),
    heating: numberField('ratio', 'h'),
  },
  formula: [
    'u_{\\mathrm{NEMA}} = \\frac{ \\max_i | U_i - \\bar{U} | }{ \\bar{U} }',
    '\\beta = \\frac{ \\sum U_i^4 }{ ( \\sum U_i^2 )^2 }, \\quad u_2 = \\sqrt{ \\frac{ 1 - \\sqrt{3 - 6 \\beta} }{ 1 + \\sqrt{3 - 6 \\beta} } }',
    'i = 6 \\dots 10\\, u_{\\mathrm{NEMA}}, \\quad h = 200\\, u_{\\mathrm{NEMA}}^2',
  ],
  limits: [
    caution,
    { code: 'UNBALANCE_WAYS_DIFFER', broken: () => true },
    { code: 'UNBALANCE_OVER_1', broken: (_, { nema }) => nema > 0.01 },
    { code: 'UNBALANCE_OVER_IEC', broken: (_, { sequence }) => sequence > 0.02 },
    { code: 'UNBALANCE_DO_NOT_RUN', broken: (_, { nema }) => nema > 0.05 },
  ],
  sources: [
    {
      title: 'article on motor measurements quoting NEMA MG 1, US DOE and EN 50160',
      place: 'public page',
      mark: 'read',
    },
    { title: 'IEC 61000-4-30', place: 'voltage unbalance from line-to-line readings', mark: 'memory' },
  ],
  check: (i) =>
    triangle(i)
      ? []
      : [
          {
            code: 'UNBALANCE_NO_TRIANGLE',
            path:
              i.first >= i.second && i.first >= i.third ? 'first' : i.second >= i.third ? 'second' : 'third',
            given: Math.max(i.first, i.second, i.third),
          },
        ],
  compute: ({ first, second, third }: VoltageUnbalanceInputs) => {
    const nema = nemaUnbalance(first, second, third);
    return {
      mean: mean(first, second, third),
      nema,
      sequence: sequenceUnbalance(first, second, third),
      lowestCurrent: 6 * nema,
      highestCurrent: 10 * nema,
      // in per cent it reads 2 u^2, so in shares 200 u^2
      heating: 200 * nema * nema,
    };
  },
});
