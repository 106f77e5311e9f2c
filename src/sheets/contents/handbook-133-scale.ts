import { choiceField, numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { handbookScale } from './handbook-133-constants.ts';
import { handbookText } from './rule-sources.ts';
import { someMasses } from './weighing-bounds.ts';

export const scaleClasses = ['II', 'III'] as const;
export type ScaleClass = (typeof scaleClasses)[number];

interface ToleranceRow {
  /** Load, in divisions. */
  readonly most: number;
  /** In divisions. */
  readonly tolerance: number;
}

/** Acceptance tolerances as chapter 2 prints them. */
const tolerances: Readonly<Record<ScaleClass, readonly ToleranceRow[]>> = {
  II: [
    { most: 5_000, tolerance: 0.5 },
    { most: 20_000, tolerance: 1 },
    { most: Number.POSITIVE_INFINITY, tolerance: 1.5 },
  ],
  III: [
    { most: 500, tolerance: 0.5 },
    { most: 2_000, tolerance: 1 },
    { most: 4_000, tolerance: 1.5 },
    { most: Number.POSITIVE_INFINITY, tolerance: 2.5 },
  ],
};

export const fitnesses = ['fits', 'does not fit'] as const;
export type Fitness = (typeof fitnesses)[number];

interface HandbookScaleInputs {
  readonly variation: number;
  readonly division: number;
  readonly capacity: number;
  readonly load: number;
  readonly scaleClass: ScaleClass;
}

interface HandbookScaleOutputs {
  readonly fitness: Fitness;
  readonly largestDivision: number;
  readonly divisions: number;
  readonly tolerance: number;
}

// 7.2 g over 6 is 1.2 g and not a hair less
const rounding = 1e-9;

/** Whether a scale may be used for a lot under Handbook 133. */
export const handbook133ScaleSheet = defineSheet<HandbookScaleInputs, HandbookScaleOutputs>({
  id: 'contents/handbook-133-scale',
  version: 1,
  inputs: {
    variation: weighedField('mass', '\\mathrm{MAV}', someMasses),
    division: weighedField('mass', 'd', someMasses),
    capacity: weighedField('mass', '\\mathrm{Max}', someMasses),
    load: weighedField('mass', 'm', someMasses),
    scaleClass: choiceField<ScaleClass>('\\text{class}', scaleClasses, 'III'),
  },
  outputs: {
    fitness: choiceField<Fitness>('\\text{fitness}', fitnesses),
    largestDivision: weighedField('mass', 'd_{\\max}'),
    divisions: numberField('ratio', '\\mathrm{Max}/d'),
    tolerance: weighedField('mass', 'E'),
  },
  formula: [
    'd_{\\max} = \\frac{\\mathrm{MAV}}{6}, \\quad d \\le d_{\\max}, \\quad \\frac{\\mathrm{Max}}{d} \\ge 100',
    'E = E_d(m/d)\\, d',
  ],
  limits: [{ code: 'RULE_AUTHORITY', broken: () => true }],
  sources: [handbookText],
  compute: ({ variation, division, capacity, load, scaleClass }) => {
    const largestDivision = variation / handbookScale.variationInDivisions;
    const divisions = capacity / division;
    const row = tolerances[scaleClass].find(({ most }) => load / division <= most * (1 + rounding))!;
    const fits =
      division <= largestDivision * (1 + rounding) && divisions >= handbookScale.divisions * (1 - rounding);
    return {
      fitness: fits ? 'fits' : 'does not fit',
      largestDivision,
      divisions,
      tolerance: row.tolerance * division,
    };
  },
});
