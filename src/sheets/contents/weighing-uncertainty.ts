import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { referenceWeightDensity, usualAirDensity, volumeByWeighing } from './volume-by-weighing.ts';
import {
  airDensities,
  expansions,
  liquidDensities,
  masses,
  someMasses,
  temperatureSteps,
  weightDensities,
} from './weighing-bounds.ts';
import { buoyancy, guideToUncertainty } from './weighing-sources.ts';

/** Standard deviation of a value that lies anywhere within a half-width with equal chance: a/sqrt 3. */
const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** Of the difference of two readings, each rounded to a division d: d sqrt(2/12). */
const twoReadings = (division: number): number => division / Math.sqrt(6);

export interface WeighingDoubts {
  /** Standard uncertainty of the balance's calibration, kg. */
  readonly calibration: number;
  /** Division of the balance, kg. */
  readonly division: number;
  /** Standard deviation of repeated weighings, kg. */
  readonly repeatability: number;
  /** Liquid that may stay at the mouth or evaporate, half-width, kg. */
  readonly loss: number;
  /** Half-width of the temperature, K. */
  readonly temperature: number;
  /** Half-width of the density of the air, kg/m3. */
  readonly air: number;
  /** Standard uncertainty of the density of the liquid beyond its temperature, kg/m3. */
  readonly density: number;
}

/** What is weighed, and in what. */
export interface Weighed {
  readonly mass: number;
  readonly density: number;
  readonly expansion: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

/**
 * Contributions to the standard uncertainty of a volume by weighing, each as a volume.
 *
 * Method   u_i = |dV/dx_i| u(x_i) of V = m (1 - rho_a/rho_b)/(rho - rho_a)
 * Symbols  weighed  what was weighed
 *          doubts   standard uncertainties and half-widths, see `WeighingDoubts`
 * Returns  m3 each
 * Assumes  independent contributions; first order
 * Cost     O(1)
 * Source   JCGM 100, 4.3 and 5.1.2
 */
export const weighingContributions = (
  { mass, density, expansion, airDensity, weightDensity }: Weighed,
  doubts: WeighingDoubts,
) => {
  const volume = volumeByWeighing(mass, density, airDensity, weightDensity);
  const perMass = volume / mass;
  return {
    calibration: perMass * doubts.calibration,
    reading: perMass * twoReadings(doubts.division),
    repeatability: perMass * doubts.repeatability,
    loss: perMass * rectangular(doubts.loss),
    temperature: Math.abs(expansion) * volume * rectangular(doubts.temperature),
    air:
      volume *
      Math.abs(1 / (density - airDensity) - 1 / (weightDensity - airDensity)) *
      rectangular(doubts.air),
    density: (volume / (density - airDensity)) * doubts.density,
  };
};

interface WeighingUncertaintyInputs extends Weighed {
  readonly calibration: number;
  readonly division: number;
  readonly repeatability: number;
  readonly loss: number;
  readonly temperatureWidth: number;
  readonly airWidth: number;
  readonly densityUncertainty: number;
  readonly coverage: number;
}

interface WeighingUncertaintyOutputs {
  readonly uncertainty: number;
  readonly expanded: number;
  readonly calibrationPart: number;
  readonly readingPart: number;
  readonly repeatPart: number;
  readonly lossPart: number;
  readonly temperaturePart: number;
  readonly airPart: number;
  readonly densityPart: number;
}

export const weighingUncertaintySheet = defineSheet<WeighingUncertaintyInputs, WeighingUncertaintyOutputs>({
  id: 'contents/weighing-uncertainty',
  version: 1,
  inputs: {
    mass: weighedField('mass', 'm', someMasses),
    density: weighedField('density', '\\rho', liquidDensities),
    // water at 20 degC
    expansion: numberField('cubicExpansion', '\\beta', { ...expansions, assumed: 2.07e-4 }),
    airDensity: weighedField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: weighedField('density', '\\rho_b', {
      ...weightDensities,
      assumed: referenceWeightDensity,
    }),
    calibration: weighedField('mass', 'u_c', masses),
    division: weighedField('mass', 'd', masses),
    repeatability: weighedField('mass', 's', masses),
    loss: weighedField('mass', 'a_l', { ...masses, assumed: 0 }),
    temperatureWidth: numberField('temperatureDifference', 'a_T', temperatureSteps),
    airWidth: weighedField('density', 'a_a', { ...airDensities, assumed: 0.035 }),
    densityUncertainty: weighedField('density', 'u_\\rho', { least: 0, most: 100, assumed: 0 }),
    coverage: numberField('ratio', 'k', { least: 1, most: 5, assumed: 2 }),
  },
  outputs: {
    uncertainty: weighedField('volume', 'u'),
    expanded: weighedField('volume', 'U'),
    calibrationPart: weighedField('volume', 'u_1'),
    readingPart: weighedField('volume', 'u_2'),
    repeatPart: weighedField('volume', 'u_3'),
    lossPart: weighedField('volume', 'u_4'),
    temperaturePart: weighedField('volume', 'u_5'),
    airPart: weighedField('volume', 'u_6'),
    densityPart: weighedField('volume', 'u_7'),
  },
  formula: [
    'u = \\sqrt{\\textstyle\\sum u_i^2}, \\quad U = k u',
    'u_1 = \\frac{V}{m} u_c, \\quad u_2 = \\frac{V}{m} \\frac{d}{\\sqrt 6}, \\quad u_3 = \\frac{V}{m} s, \\quad u_4 = \\frac{V}{m} \\frac{a_l}{\\sqrt 3}',
    'u_5 = \\beta V \\frac{a_T}{\\sqrt 3}, \\quad u_6 = V \\left( \\frac{1}{\\rho - \\rho_a} - \\frac{1}{\\rho_b - \\rho_a} \\right) \\frac{a_a}{\\sqrt 3}, \\quad u_7 = \\frac{V}{\\rho - \\rho_a} u_\\rho',
  ],
  limits: [],
  sources: [buoyancy, guideToUncertainty],
  compute: (i) => {
    const parts = weighingContributions(i, {
      calibration: i.calibration,
      division: i.division,
      repeatability: i.repeatability,
      loss: i.loss,
      temperature: i.temperatureWidth,
      air: i.airWidth,
      density: i.densityUncertainty,
    });
    const uncertainty = Math.hypot(...Object.values(parts));
    return {
      uncertainty,
      expanded: i.coverage * uncertainty,
      calibrationPart: parts.calibration,
      readingPart: parts.reading,
      repeatPart: parts.repeatability,
      lossPart: parts.loss,
      temperaturePart: parts.temperature,
      airPart: parts.air,
      densityPart: parts.density,
    };
  },
});
