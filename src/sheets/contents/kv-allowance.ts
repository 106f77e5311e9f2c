import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { allowanceHabit } from './allowance-sources.ts';
import { changeRatios } from './fill-bounds.ts';

interface KvAllowanceInputs {
  readonly viscosityRatio: number;
}

interface KvAllowanceOutputs {
  readonly shift: number;
  readonly deviation: number;
}

/** A thin syrup takes a few per cent of a valve's Kv for a tenfold viscosity; nobody's figure is better than half of it. */
const kvPerDecade = 0.05;
const kvDoubt = 0.5;

/**
 * By how much the Kv of a lane differs where the product is thicker or thinner.
 *
 * Method   d = -0.05 max(0, log10 r);  u = 0.025 |log10 r|
 * Symbols  viscosityRatio  r  kinematic viscosity there over here
 * Returns  expected change of Kv and its standard deviation, as shares
 * Assumes  a lane that is turbulent on both floors; a thinner product than the trials' is expected to move nothing
 * Cost     O(1)
 * Source   common practice
 */
export const kvAllowance = ({ viscosityRatio }: KvAllowanceInputs): KvAllowanceOutputs => {
  const thicker = Math.log(viscosityRatio) / Math.log(10);
  return {
    shift: -kvPerDecade * Math.max(0, thicker),
    deviation: kvDoubt * kvPerDecade * Math.abs(thicker),
  };
};

export const kvAllowanceSheet = defineSheet<KvAllowanceInputs, KvAllowanceOutputs>({
  id: 'contents/kv-allowance',
  version: 1,
  inputs: { viscosityRatio: numberField('ratio', 'r', changeRatios) },
  outputs: { shift: numberField('ratio', 'd'), deviation: numberField('ratio', 'u') },
  formula: ['d = -0.05 \\max(0, \\log_{10} r), \\quad u = 0.025\\, |\\log_{10} r|'],
  limits: [
    { code: 'KV_HABIT', broken: () => true },
    // beyond a decade the coefficient is a guess
    {
      code: 'KV_THICK',
      broken: ({ viscosityRatio }) => viscosityRatio > 10 || viscosityRatio < 0.1,
    },
  ],
  sources: [allowanceHabit],
  compute: kvAllowance,
});
