import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heads, speedRatios } from './bounds.ts';
import { affineHead } from './pump-affinity.ts';

interface NpshRequiredHereInputs {
  readonly required: number;
  readonly ratio: number;
}

/**
 * Net positive suction head that a pump requires at another speed.
 *
 * Method   NPSH_2 = NPSH_1 s^2, at the flow s Q_1
 * Symbols  NPSH_1  required  scalar  m  at the speed of its curve
 *          s       ratio     scalar  1  speed here over that of the curve
 * Returns  head, m
 * Assumes  scales as the head does; below about 70 % of the speed it falls less than that (memory)
 * Cost     O(1)
 * Source   trade journal on pumps; `affineHead`
 */
export const npshRequiredHere = (required: number, ratio: number): number => affineHead(required, ratio);

export const npshRequiredHereSheet = defineSheet({
  id: 'water/npsh-required-here',
  version: 1,
  inputs: {
    required: numberField('length', '\\mathrm{NPSH}_1', heads),
    ratio: numberField('ratio', 's', speedRatios),
  },
  outputs: { required: numberField('length', '\\mathrm{NPSH}_2') },
  formula: ['\\mathrm{NPSH}_2 = s^2\\, \\mathrm{NPSH}_1 \\quad \\text{at} \\quad Q_2 = s\\, Q_1'],
  limits: [
    { code: 'NPSH_FLOW_MOVES', broken: () => true },
    { code: 'PUMP_SPEED_FAR', broken: ({ ratio }) => ratio < 0.7 || ratio > 1.3 },
  ],
  sources: [
    {
      title: 'trade journal on pumps, column on slower running and suction head',
      edition: 'January 2009',
      place: 'the curve of the required head scales as the head, public page',
      mark: 'read',
    },
  ],
  compute: ({ required, ratio }: NpshRequiredHereInputs) => ({ required: npshRequiredHere(required, ratio) }),
});
