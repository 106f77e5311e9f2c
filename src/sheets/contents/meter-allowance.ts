import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { allowanceHabit, guideRectangular } from './allowance-sources.ts';
import { changeRatios } from './fill-bounds.ts';

interface MeterAllowanceInputs {
  readonly meterClass: number;
  readonly ratio: number;
}

interface MeterAllowanceOutputs {
  readonly deviation: number;
}

const rootThree = Math.sqrt(3);
/** A tenfold change of flow or viscosity takes a meter through all of its class. */
const decade = 10;

/**
 * By how much the volume of a pulse may differ where the flow or the viscosity is another.
 *
 * Method   rectangular within the class, in the part that the change goes through: u = c min(1, |log10 r|)/sqrt 3
 * Symbols  meterClass  c  largest error over the range  ratio
 *          ratio       r  flow or kinematic viscosity there over here
 * Returns  standard deviation of the pulse's volume, as a share
 * Assumes  the error drifts evenly over a decade and nobody knows which way
 * Cost     O(1)
 * Source   JCGM 100:2008, 4.3.7 (memory); the decade is common practice
 */
export const meterAllowance = ({ meterClass, ratio }: MeterAllowanceInputs): MeterAllowanceOutputs => {
  const decades = Math.abs(Math.log(Math.max(ratio, Number.MIN_VALUE))) / Math.log(decade);
  return { deviation: (meterClass / rootThree) * Math.min(1, decades) };
};

export const meterAllowanceSheet = defineSheet<MeterAllowanceInputs, MeterAllowanceOutputs>({
  id: 'contents/meter-allowance',
  version: 1,
  inputs: {
    meterClass: numberField('ratio', 'c', { least: 0, most: 0.2 }),
    ratio: numberField('ratio', 'r', changeRatios),
  },
  outputs: { deviation: numberField('ratio', 'u') },
  formula: ['u = \\frac{c}{\\sqrt 3} \\min(1, |\\log_{10} r|)'],
  limits: [{ code: 'METER_HABIT', broken: () => true }],
  sources: [guideRectangular, allowanceHabit],
  compute: meterAllowance,
});
