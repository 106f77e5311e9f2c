import type { Problem } from '../../quantity/problem.ts';
import { choiceField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { referenceWeightDensity, usualAirDensity, volumeByWeighing } from './volume-by-weighing.ts';
import { airDensities, liquidDensities, masses, someMasses, weightDensities } from './weighing-bounds.ts';
import { buoyancy } from './weighing-sources.ts';

export const taringWays = ['each', 'mean'] as const;
/** Each package has its own tare, or the mean of a few opened ones counts for all. */
export type TaringWay = (typeof taringWays)[number];

interface PackageVolumesInputs {
  readonly gross: readonly number[];
  readonly tares: readonly number[];
  readonly taring: TaringWay;
  readonly density: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

interface PackageVolumesOutputs {
  readonly volumes: readonly number[];
  readonly meanTare: number;
  readonly tareRange: number;
}

const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** The tare that counts for every package. */
const taresOf = ({ gross, tares, taring }: PackageVolumesInputs): readonly number[] => {
  if (taring === 'each') return tares;
  const mean = meanOf(tares);
  return gross.map(() => mean);
};

const tareProblems = (i: PackageVolumesInputs): readonly Problem[] => {
  if (i.taring === 'each' && i.tares.length !== i.gross.length) {
    const [given, allowed] = [i.tares.length, `${i.gross.length}`];
    return [{ code: 'PACKAGE_TARES_FEW', path: 'tares', given, allowed }];
  }
  const tares = taresOf(i);
  const wrong = i.gross.findIndex((gross, package_) => !(gross > tares[package_]!));
  return wrong === -1
    ? []
    : [
        {
          code: 'PACKAGE_TARE_OVER_GROSS',
          path: `gross.${wrong}`,
          given: i.gross[wrong]!,
          allowed: `> ${tares[wrong]}`,
          parts: { number: wrong + 1 },
        },
      ];
};

/** Contents of weighed packages, in the order in which they were drawn. */
export const packageVolumesSheet = defineSheet<PackageVolumesInputs, PackageVolumesOutputs>({
  id: 'contents/package-volumes',
  version: 1,
  inputs: {
    gross: weighedList('mass', 'm_i', someMasses),
    tares: weighedList('mass', 't_i', masses),
    taring: choiceField<TaringWay>('\\text{taring}', taringWays, 'mean'),
    density: weighedField('density', '\\rho', liquidDensities),
    airDensity: weighedField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: weighedField('density', '\\rho_b', {
      ...weightDensities,
      assumed: referenceWeightDensity,
    }),
  },
  outputs: {
    volumes: weighedList('volume', 'V_i'),
    meanTare: weighedField('mass', '\\bar t'),
    tareRange: weighedField('mass', 'R_t'),
  },
  formula: [
    'V_i = (m_i - t)\\, \\frac{1 - \\rho_a/\\rho_b}{\\rho - \\rho_a}, \\quad t = t_i \\text{ or } \\bar t',
  ],
  limits: [
    { code: 'PACKAGE_MEAN_TARE', broken: ({ taring }) => taring === 'mean' },
    { code: 'PACKAGE_ONE_TARE', broken: ({ taring, tares }) => taring === 'mean' && tares.length === 1 },
  ],
  sources: [buoyancy],
  check: tareProblems,
  compute: (i) => {
    const tares = taresOf(i);
    return {
      volumes: i.gross.map((gross, package_) =>
        volumeByWeighing(gross - tares[package_]!, i.density, i.airDensity, i.weightDensity),
      ),
      meanTare: meanOf(i.tares),
      tareRange: Math.max(...i.tares) - Math.min(...i.tares),
    };
  },
});
