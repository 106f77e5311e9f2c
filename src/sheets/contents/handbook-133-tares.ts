import type { Problem } from '../../quantity/problem.ts';
import { numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { handbookPlans } from './handbook-133-constants.ts';
import { planOfLot } from './plan-of-lot.ts';
import { handbookText } from './rule-sources.ts';
import { lotSizes, masses, someMasses } from './weighing-bounds.ts';

interface HandbookTaresInputs {
  readonly lotSize: number;
  readonly gross: readonly number[];
  readonly tares: readonly number[];
  readonly typedTares: number;
}

interface HandbookTaresOutputs {
  readonly opened: number;
  readonly errorRange: number;
  readonly tareRange: number;
  readonly ratio: number;
  readonly wanted: number;
  readonly more: number;
}

/** In a sample smaller than this the packages that are opened first are all that must be. */
const smallSample = 12;

const rangeOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/**
 * Packages that must be opened for the average tare under Handbook 133.
 *
 * Method   R_c = range of the errors of the opened packages, R_t = range of their tares; R_c/R_t leads into table 2-3,
 *          whose number is typed in
 * Symbols  gross       [k]     kg, of the opened packages; against one nominal gross their errors range as they do
 *          tares       [k]     kg, of the same
 *          lotSize     scalar  packages in the lot
 *          typedTares  scalar  tares in all by table 2-3 of the edition; 0 while nobody has read it
 * Returns  R_c/R_t, 0 where all tares are alike; how many must be opened, and how many more. Until the table has been read
 *          that is as many as the plan takes, of which nobody would ask for more
 * Cost     O(k)
 * Source   NIST Handbook 133:2026, chapter 2; of its table 2-3 we hold no copy
 */
const handbookTares = ({ lotSize, gross, tares, typedTares }: HandbookTaresInputs): HandbookTaresOutputs => {
  const { sample } = planOfLot(handbookPlans, lotSize);
  const opened = tares.length;
  const [errorRange, tareRange] = [rangeOf(gross), rangeOf(tares)];
  const byTable = typedTares > 0 ? Math.min(sample, typedTares) : sample;
  const wanted = sample < smallSample ? Math.min(sample, opened) : byTable;
  return {
    opened,
    errorRange,
    tareRange,
    ratio: tareRange > 0 ? errorRange / tareRange : 0,
    wanted,
    more: Math.max(0, wanted - opened),
  };
};

const wrong = ({ gross, tares, typedTares }: HandbookTaresInputs): readonly Problem[] => [
  ...listLengths({ gross, tares }),
  ...(Number.isInteger(typedTares)
    ? []
    : [{ code: 'TARES_NOT_WHOLE', path: 'typedTares', given: typedTares }]),
];

export const handbook133TaresSheet = defineSheet<HandbookTaresInputs, HandbookTaresOutputs>({
  id: 'contents/handbook-133-tares',
  version: 1,
  inputs: {
    lotSize: numberField('count', 'N', lotSizes),
    gross: weighedList('mass', 'm_i', someMasses),
    tares: weighedList('mass', 't_i', masses),
    typedTares: numberField('count', 'n_t', { least: 0, most: 1e6, assumed: 0 }),
  },
  outputs: {
    opened: numberField('count', 'k'),
    errorRange: weighedField('mass', 'R_c'),
    tareRange: weighedField('mass', 'R_t'),
    ratio: numberField('ratio', 'R_c / R_t'),
    wanted: numberField('count', 'n_t'),
    more: numberField('count', 'n_t - k'),
  },
  formula: ['R_c = \\max m_i - \\min m_i, \\quad R_t = \\max t_i - \\min t_i, \\quad n_t = n_t(R_c / R_t)'],
  limits: [
    {
      code: 'TARES_TABLE_UNREAD',
      broken: ({ typedTares }, { more }) => typedTares === 0 && more > 0,
    },
    { code: 'TARES_TYPED', broken: ({ typedTares }) => typedTares > 0 },
    { code: 'TARES_ALIKE', broken: (_, { tareRange }) => tareRange === 0 },
  ],
  sources: [handbookText],
  check: wrong,
  compute: handbookTares,
});
