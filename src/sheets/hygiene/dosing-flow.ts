import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { concentrations, disinfectants, flows } from './bounds.ts';
import { chemicalCaution } from './caution.ts';
import { derived } from './sources.ts';

interface DosingInputs {
  readonly flow: number;
  readonly strong: number;
  readonly wanted: number;
  readonly arriving: number;
  readonly demand: number;
}

/**
 * Flow of a concentrate that brings running water to a strength.
 *
 * Method   Q_d = Q (C_2 + d - C_r)/(C_1 - C_2 - d), from Q C_r + Q_d C_1 = (Q + Q_d)(C_2 + d); never below zero
 * Symbols  Q    flow      scalar  m3/s
 *          C_1  strong    scalar  kg/m3  > C_2 + d
 *          C_2  wanted    scalar  kg/m3
 *          C_r  arriving  scalar  kg/m3  already in the water
 *          d    demand    scalar  kg/m3  used up by soil, caustic, iron; measured
 * Returns  flow, m3/s
 * Cost     O(1)
 * Source   balance
 */
export const dosingFlow = ({ flow, strong, wanted, arriving, demand }: DosingInputs): number =>
  (flow * Math.max(0, wanted + demand - arriving)) / (strong - wanted - demand);

export const dosingFlowSheet = defineSheet({
  id: 'hygiene/dosing-flow',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    strong: numberField('soluteConcentration', 'C_1', concentrations),
    wanted: numberField('soluteConcentration', 'C_2', concentrations),
    arriving: numberField('soluteConcentration', 'C_r', { ...disinfectants, assumed: 0 }),
    demand: numberField('soluteConcentration', 'd', { ...disinfectants, assumed: 0 }),
  },
  outputs: { dose: numberField('volumeFlow', 'Q_d') },
  formula: ['Q_d = Q \\frac{C_2 + d - C_r}{C_1 - C_2 - d}'],
  limits: [
    { code: 'DOSING_NONE', broken: (_, { dose }) => dose === 0 },
    { code: 'DOSING_NO_DEMAND', broken: ({ demand }) => demand === 0 },
    chemicalCaution,
  ],
  sources: [derived],
  check: ({ strong, wanted, demand }) =>
    strong > (wanted + demand) * (1 + 1e-9)
      ? []
      : [{ code: 'DOSING_WEAK', path: 'strong', given: strong, allowed: `> ${wanted + demand}` }],
  compute: (i: DosingInputs) => ({ dose: dosingFlow(i) }),
});
