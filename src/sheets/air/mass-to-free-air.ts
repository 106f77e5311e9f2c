import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  type Counting,
  countings,
  type ReferenceId,
  referenceDryDensity,
  referenceIds,
} from './reference-states.ts';
import { idealGas } from './sources.ts';

interface MassToFreeAirInputs {
  readonly massFlow: number;
  readonly to: ReferenceId;
  readonly counting: Counting;
}

export const massToFreeAirSheet = defineSheet({
  id: 'air/mass-to-free-air',
  version: 1,
  inputs: {
    massFlow: numberField('massFlow', '\\dot m', { least: 0, most: 1000 }),
    to: choiceField<ReferenceId>('B', referenceIds),
    counting: choiceField<Counting>('\\text{humidity}', countings, 'humidity left out'),
  },
  outputs: { flow: numberField('actualAirFlow', 'q_B') },
  formula: ['q_B = \\frac{\\dot m R T_B}{p_B - \\varphi_B e_s(T_B)}'],
  limits: [],
  sources: [idealGas],
  compute: ({ massFlow, to, counting }: MassToFreeAirInputs) => ({
    flow: massFlow / referenceDryDensity(to, counting),
  }),
});
