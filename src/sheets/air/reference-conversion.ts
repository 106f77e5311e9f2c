import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { actualFlows } from './bounds.ts';
import {
  type Counting,
  countings,
  type ReferenceId,
  referenceDryDensity,
  referenceIds,
} from './reference-states.ts';
import { freeAirArticle, idealGas } from './sources.ts';

interface ReferenceConversionInputs {
  readonly flow: number;
  readonly from: ReferenceId;
  readonly to: ReferenceId;
  readonly counting: Counting;
}

export const referenceConversionSheet = defineSheet({
  id: 'air/reference-conversion',
  version: 1,
  inputs: {
    flow: numberField('actualAirFlow', 'q_A', actualFlows),
    from: choiceField<ReferenceId>('A', referenceIds),
    to: choiceField<ReferenceId>('B', referenceIds),
    counting: choiceField<Counting>('\\text{humidity}', countings, 'humidity left out'),
  },
  outputs: {
    flow: numberField('actualAirFlow', 'q_B'),
    dryMassFlow: numberField('massFlow', '\\dot m'),
  },
  formula: [
    'q_B = q_A \\frac{p_A - \\varphi_A e_s(T_A)}{p_B - \\varphi_B e_s(T_B)} \\frac{T_B}{T_A}',
    '\\dot m = q_A \\frac{p_A - \\varphi_A e_s(T_A)}{R T_A}',
  ],
  limits: [
    {
      code: 'REFERENCE_ANR_DISAGREES',
      broken: ({ from, to }) => from === 'ANR' || to === 'ANR',
    },
    {
      code: 'REFERENCE_SCFM_MIXED',
      broken: ({ from, to }) =>
        [from, to].some((id) => id === 'CAGI' || id === '60 degF' || id.startsWith('14.7')),
    },
  ],
  sources: [idealGas, freeAirArticle],
  compute: ({ flow, from, to, counting }: ReferenceConversionInputs) => {
    const dryMassFlow = flow * referenceDryDensity(from, counting);
    return { flow: dryMassFlow / referenceDryDensity(to, counting), dryMassFlow };
  },
});
