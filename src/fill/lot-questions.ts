import type { Problem } from '../quantity/problem.ts';
import type { WeighedLot } from './weighed-lot.ts';

const missing = (code: string, path: string, asked: boolean): readonly Problem[] =>
  asked ? [{ code, path }] : [];

/** What a lot still wants before its rule can judge it. */
export const lotMissing = (lot: WeighedLot): readonly Problem[] => {
  const handbook = lot.rule === 'NIST Handbook 133';
  const own = lot.packages.filter(({ tare }) => tare !== undefined).length;
  // the handbook weighs with one average tare, of those that were opened
  const tared =
    own >= (handbook ? Math.min(1, lot.packages.length) : lot.packages.length) ||
    (lot.tares ?? []).length > 0;
  return [
    ...missing('LOT_PACKAGES_MISSING', 'packages', lot.packages.length === 0),
    ...missing('LOT_LABEL_MISSING', 'label', lot.label === undefined),
    ...missing('LOT_SIZE_MISSING', 'size', lot.size === undefined),
    ...missing('LOT_DENSITY_MISSING', 'density', lot.density === undefined),
    ...missing('LOT_TARE_MISSING', 'tares', !tared),
    ...missing('LOT_VARIATION_MISSING', 'variation', handbook && lot.variation === undefined),
    ...missing(
      'LOT_PLAN_EDITION_MISSING',
      'edition',
      lot.rule === 'OIML R 87' && lot.typedPlan !== undefined && (lot.edition ?? '').trim() === '',
    ),
    ...missing('LOT_EDITION_MISSING', 'edition', handbook && (lot.edition ?? '').trim() === ''),
  ];
};

const notPositive = (value: number, path: string): readonly Problem[] =>
  Number.isFinite(value) && value > 0 ? [] : [{ code: 'LOT_MASS', path, given: value, allowed: '> 0' }];

const negative = (value: number | undefined, path: string): readonly Problem[] =>
  value === undefined || (Number.isFinite(value) && value >= 0)
    ? []
    : [{ code: 'LOT_MASS', path, given: value, allowed: '>= 0' }];

/** Masses that cannot be, each at its field. */
export const lotMassProblems = ({ packages, tares = [] }: WeighedLot): readonly Problem[] => [
  ...packages.flatMap(({ gross, tare }, i) => [
    ...notPositive(gross, `packages/${i}/gross`),
    ...negative(tare, `packages/${i}/tare`),
    ...(tare !== undefined && tare >= gross
      ? [{ code: 'LOT_TARE_OVER_GROSS', path: `packages/${i}/tare`, given: tare, allowed: `< ${gross}` }]
      : []),
  ]),
  ...tares.flatMap((tare, i) => negative(tare, `tares/${i}`)),
];
