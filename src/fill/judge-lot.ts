import type { Problem } from '../quantity/problem.ts';
import { densityInAirSheet } from '../sheets/contents/density-in-air.ts';
import { euLotSheet } from '../sheets/contents/eu-lot.ts';
import { handbook133LotSheet } from '../sheets/contents/handbook-133-lot.ts';
import type { LotVerdict } from '../sheets/contents/lot-verdicts.ts';
import { oimlSmallestLots } from '../sheets/contents/oiml-constants.ts';
import { oimlLotSheet } from '../sheets/contents/oiml-lot.ts';
import { packageVolumesSheet } from '../sheets/contents/package-volumes.ts';
import { referenceTemperature, referenceTemperatureSheet } from '../sheets/contents/reference-temperature.ts';
import { tolerableDeficiencySheet } from '../sheets/contents/tolerable-deficiency.ts';
import { ukLotSheet } from '../sheets/contents/uk-lot.ts';
import { lotDensity } from './lot-density.ts';
import { lotMassProblems, lotMissing } from './lot-questions.ts';
import { averageScaleFits, handbookScaleFits } from './lot-scale.ts';
import { lotTares } from './lot-tares.ts';
import type { WeighedLot } from './weighed-lot.ts';
import {
  makeWorksheet,
  outputOf,
  type Step,
  type StepInput,
  type StepOrigin,
  type Worksheet,
} from './worksheet.ts';

export interface LotJudgement {
  readonly verdict: LotVerdict;
  /** Packages still to draw. */
  readonly more: number;
  /** Why it was not decided: each names the field that would decide. */
  readonly missing: readonly Problem[];
  /** What cannot be, at its field. */
  readonly problems: readonly Problem[];
  /** What must be known with the verdict. */
  readonly remarks: readonly Problem[];
  /** The whole way, each step a sheet with its numbers. */
  readonly steps: readonly Step[];
  /** Which step gave the verdict. */
  readonly judged?: number;
}

const undecided = (
  sheet: Worksheet,
  missing: readonly Problem[],
  problems: readonly Problem[] = [],
): LotJudgement => ({
  verdict: 'not decided',
  more: 0,
  missing,
  problems: [...problems, ...sheet.problems],
  remarks: [],
  steps: sheet.steps,
});

const places = {
  quantity: 'label',
  lotSize: 'size',
  gross: 'packages',
  volumes: 'packages',
  variation: 'variation',
  typedSample: 'typedPlan',
  density: 'density',
  tares: 'tares',
  airDensity: 'airDensity',
};

/** The temperature that the rule sets, or where it sets none the one that was agreed. */
const referenceOf = (
  sheet: Worksheet,
  { rule, product = 'liquid', agreedReference }: WeighedLot,
): { readonly at: number; readonly from: number | StepOrigin } | undefined => {
  if (referenceTemperature(rule, product) === undefined) {
    return agreedReference === undefined ? undefined : { at: agreedReference, from: agreedReference };
  }
  const step = sheet.run(referenceTemperatureSheet, { rule, product });
  if (!step.ok) return undefined;
  const from = outputOf(step.value, 'reference');
  return { at: sheet.number(from), from };
};

const taresOf = ({ packages, tares = [] }: WeighedLot) => {
  const own = packages.map(({ tare }) => tare).filter((tare) => tare !== undefined);
  return own.length === packages.length
    ? ({ taring: 'each', tares: own } as const)
    : ({ taring: 'mean', tares: tares.length > 0 ? tares : own } as const);
};

interface Judged {
  readonly step?: number;
  /** Whether the scale is fine enough; undefined where that is not known. */
  readonly scaleFits?: boolean | undefined;
}

const heaviest = ({ packages }: WeighedLot): number => Math.max(...packages.map(({ gross }) => gross));

const byHandbook = (sheet: Worksheet, lot: WeighedLot, density: StepInput): Judged => {
  const { label, size, variation, airDensity } = lot;
  const inAir = sheet.run(densityInAirSheet, { density, airDensity }, places);
  if (!inAir.ok) return {};
  const asWeighed = outputOf(inAir.value, 'inAir');
  const { tares } = taresOf(lot);
  const scaleFits =
    lot.scale === undefined
      ? undefined
      : handbookScaleFits(sheet, lot.scale, {
          load: heaviest(lot),
          variation: variation! * sheet.number(asWeighed),
        });
  const step = sheet.run(
    handbook133LotSheet,
    {
      quantity: label,
      lotSize: size,
      gross: lot.packages.map(({ gross }) => gross),
      // one average tare, also of packages that have their own
      tares,
      density: asWeighed,
      variation,
    },
    places,
  );
  return { ...(step.ok ? { step: step.value } : {}), scaleFits };
};

const byAverage = (
  sheet: Worksheet,
  lot: WeighedLot,
  rule: Exclude<WeighedLot['rule'], 'NIST Handbook 133'>,
  density: StepInput,
): Judged => {
  const { label, size, airDensity } = lot;
  const deficiency = sheet.run(tolerableDeficiencySheet, { rule, quantity: label }, places);
  const contents = sheet.run(
    packageVolumesSheet,
    { gross: lot.packages.map(({ gross }) => gross), ...taresOf(lot), density, airDensity },
    places,
  );
  if (!deficiency.ok || !contents.ok) return {};
  const given = { quantity: label, lotSize: size, volumes: outputOf(contents.value, 'volumes') };
  if (rule === 'OIML R 87') {
    const { table, typedPlan } = lot;
    const plan =
      typedPlan === undefined
        ? { table }
        : {
            table: 'typed in',
            typedSample: typedPlan.sample,
            typedFactor: typedPlan.factor,
            typedAllowed: typedPlan.allowed,
          };
    const step = sheet.run(oimlLotSheet, { ...given, ...plan }, places);
    return step.ok ? { step: step.value } : {};
  }
  const scaleFits =
    lot.scale === undefined
      ? undefined
      : averageScaleFits(sheet, lot.scale, {
          mass: heaviest(lot),
          density,
          deficiency: outputOf(deficiency.value, 'deficiency'),
        });
  const step =
    rule === 'EU average system'
      ? sheet.run(euLotSheet, { ...given, plan: lot.plan }, places)
      : sheet.run(ukLotSheet, { ...given, plan: lot.plan }, places);
  return { ...(step.ok ? { step: step.value } : {}), scaleFits };
};

/** What the rule cannot speak of, before any figure. */
const unreached = ({
  rule,
  size,
  plan,
  packages,
  table = 'Australia',
  typedPlan,
}: WeighedLot): readonly Problem[] => [
  ...(rule === 'OIML R 87' && typedPlan === undefined && size !== undefined && size < oimlSmallestLots[table]
    ? [{ code: 'LOT_OIML_SMALL', path: 'size', given: size, allowed: `${oimlSmallestLots[table]}` }]
    : []),
  ...(rule === 'EU average system' && plan === 'single'
    ? [{ code: 'LOT_PLAN_UNKNOWN', path: 'plan', given: plan, allowed: ['double', 'destructive'] }]
    : []),
  ...(rule !== 'NIST Handbook 133' && packages.length === 1
    ? [{ code: 'LOT_ONE_PACKAGE', path: 'packages', given: 1, allowed: '>= 2' }]
    : []),
];

const remarksOf = (
  lot: WeighedLot,
  reference: number,
  scaleFits: boolean | undefined,
): readonly Problem[] => {
  const { agreedReference, scale, rule, edition, typedPlan } = lot;
  const assumed =
    scale !== undefined && (scale.calibration === undefined || scale.repeatability === undefined);
  return [
    ...(agreedReference !== undefined && Math.abs(agreedReference - reference) > 0.05
      ? [
          {
            code: 'LOT_REFERENCE_OTHER',
            path: 'agreedReference',
            given: agreedReference,
            allowed: `${reference}`,
          },
        ]
      : []),
    ...(scaleFits === undefined && rule !== 'OIML R 87'
      ? [{ code: 'LOT_SCALE_UNKNOWN', path: 'scale' }]
      : []),
    ...(assumed && scaleFits !== undefined && rule !== 'NIST Handbook 133'
      ? [{ code: 'LOT_SCALE_ASSUMED', path: 'scale' }]
      : []),
    ...(edition !== undefined && rule === 'NIST Handbook 133'
      ? [{ code: 'LOT_EDITION', path: 'edition', given: edition }]
      : []),
    ...(edition !== undefined && rule === 'OIML R 87' && typedPlan !== undefined
      ? [{ code: 'LOT_PLAN_EDITION', path: 'edition', given: edition }]
      : []),
  ];
};

/**
 * Judges a lot of weighed packages by one rule, at the temperature which that rule sets for the product.
 *
 * Method   reference temperature -> density there -> contents of each package -> the rule's plan and its mean;
 *          Handbook 133: nominal gross with one average tare instead of contents
 * Symbols  lot  SI
 * Returns  accept, reject, take more, or not decided with what is missing; all steps, each a sheet with its numbers
 * Assumes  packages drawn by chance, in the order given; no other rule's constants take part
 * Cost     O(n)
 * Source   the sheets of the steps
 */
export const judgeLot = (lot: WeighedLot): LotJudgement => {
  const sheet = makeWorksheet();
  const problems = [...lotMassProblems(lot), ...unreached(lot)];
  const missing = lotMissing(lot);
  if (missing.length > 0 || problems.length > 0) return undecided(sheet, missing, problems);
  const reference = referenceOf(sheet, lot);
  if (reference === undefined) {
    return undecided(sheet, [{ code: 'LOT_REFERENCE_MISSING', path: 'agreedReference' }]);
  }
  const { density, missing: unknown } = lotDensity(sheet, lot, reference.from, reference.at);
  if (density === undefined) return undecided(sheet, unknown);
  const opened = lot.rule === 'NIST Handbook 133' ? lotTares(sheet, lot) : [];
  if (opened.length > 0) return undecided(sheet, opened);
  const { step, scaleFits } =
    lot.rule === 'NIST Handbook 133'
      ? byHandbook(sheet, lot, density)
      : byAverage(sheet, lot, lot.rule, density);
  if (step === undefined) return undecided(sheet, []);
  if (scaleFits === false) {
    // what the scale cannot show must not be read from it
    return undecided(sheet, [
      { code: 'LOT_SCALE_COARSE', path: 'scale/division', given: lot.scale?.division },
    ]);
  }
  const verdict = sheet.word(outputOf(step, 'verdict')) as LotVerdict;
  return {
    verdict,
    more: verdict === 'take more' ? sheet.number(outputOf(step, 'more')) : 0,
    missing: [],
    problems: [],
    remarks: remarksOf(lot, reference.at, scaleFits),
    steps: sheet.steps,
    judged: step,
  };
};
