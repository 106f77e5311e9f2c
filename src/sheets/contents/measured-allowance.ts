import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { guideStated } from './allowance-sources.ts';

interface MeasuredAllowanceInputs {
  readonly shift: number;
  readonly halfWidth: number;
}

interface MeasuredAllowanceOutputs {
  readonly deviation: number;
  readonly lower: number;
  readonly upper: number;
}

/** Half width of 95 % of a normal distribution, in standard deviations. */
const normal95 = 1.959963984540054;

/**
 * A change between two floors that was measured and takes the place of an allowance.
 *
 * Method   u = h/1.96; the truth between d - h and d + h
 * Symbols  shift      d  by how much the value is another there, as a share
 *          halfWidth  h  that holds the truth with 95 %
 * Returns  standard deviation of the share, and its bounds
 * Assumes  normal, as a spread that is typed with a value is
 * Cost     O(1)
 * Source   JCGM 100:2008, 4.3.4 (memory)
 */
export const measuredAllowance = ({
  shift,
  halfWidth,
}: MeasuredAllowanceInputs): MeasuredAllowanceOutputs => ({
  deviation: halfWidth / normal95,
  lower: shift - halfWidth,
  upper: shift + halfWidth,
});

export const measuredAllowanceSheet = defineSheet<MeasuredAllowanceInputs, MeasuredAllowanceOutputs>({
  id: 'contents/measured-allowance',
  version: 1,
  inputs: {
    shift: numberField('ratio', 'd', { above: -1, most: 10 }),
    halfWidth: numberField('ratio', 'h', { least: 0, most: 10 }),
  },
  outputs: {
    deviation: numberField('ratio', 'u'),
    lower: numberField('ratio', 'd - h'),
    upper: numberField('ratio', 'd + h'),
  },
  formula: ['u = \\frac{h}{1.96}, \\quad d - h \\dots d + h'],
  limits: [{ code: 'MEASURED_SURE', broken: ({ halfWidth }) => halfWidth === 0 }],
  sources: [guideStated],
  compute: measuredAllowance,
});
