import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { carries, concentrations, rates } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { derived } from './sources.ts';

interface MakeUpInputs {
  readonly rate: number;
  readonly carry: number;
  readonly bath: number;
  readonly otherLoss: number;
}

/**
 * Caustic that a bath loses and has to get back.
 *
 * Method   m = n v c + m_l
 * Symbols  n    rate       scalar  1/s
 *          v    carry      scalar  m3
 *          c    bath       scalar  kg/m3
 *          m_l  otherLoss  scalar  kg/s  to carbonate, labels, soil; from titrations
 * Returns  mass flow, kg/s
 * Cost     O(1)
 * Source   balance
 */
export const causticMakeUp = ({ rate, carry, bath, otherLoss }: MakeUpInputs): number =>
  rate * carry * bath + otherLoss;

export const causticMakeUpSheet = defineSheet({
  id: 'hygiene/caustic-make-up',
  version: 1,
  inputs: {
    rate: numberField('rate', 'n', { least: 0, most: rates.most }),
    carry: numberField('volume', 'v', carries),
    bath: numberField('soluteConcentration', 'c', concentrations),
    otherLoss: numberField('massFlow', 'm_l', { least: 0, most: 10, assumed: 0 }),
  },
  outputs: { makeUp: numberField('massFlow', 'm') },
  formula: ['m = n v c + m_l'],
  limits: [
    { code: 'MAKE_UP_CARRY_ONLY', broken: ({ otherLoss }) => otherLoss === 0 },
    always('WEIGH_TWENTY'),
    chemicalCaution,
  ],
  sources: [derived],
  compute: (i: MakeUpInputs) => ({ makeUp: causticMakeUp(i) }),
});
