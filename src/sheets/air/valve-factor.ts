import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  compressionFactors,
  dropFactors,
  type ValveLoss,
  type ValvePressure,
  valveLosses,
  valvePressures,
} from './valve-factors.ts';

interface ValveFactorInputs {
  readonly pressure: ValvePressure;
  readonly loss: ValveLoss;
}

export const valveFactorSheet = defineSheet({
  id: 'air/valve-factor',
  version: 1,
  inputs: {
    pressure: choiceField<ValvePressure>('p\\,[\\mathrm{psig}]', valvePressures),
    loss: choiceField<ValveLoss>('\\Delta p\\,[\\mathrm{psi}]', valveLosses),
  },
  outputs: {
    compressionFactor: numberField('ratio', 'c'),
    dropFactor: numberField('ratio', 'B'),
  },
  formula: [
    'c = \\frac{p + 14.7}{14.7}, \\quad B = 0.978 \\sqrt{\\Delta p\\, p_2} \\quad \\text{as printed}',
  ],
  limits: [{ code: 'VALVE_FACTOR_PRINTED', broken: () => true }],
  sources: [
    {
      title: 'US valve sizing tables, two public documents',
      place: 'factors at 40 to 100 psi',
      mark: 'read',
    },
  ],
  check: ({ pressure, loss }) =>
    dropFactors[pressure]?.[loss] === undefined
      ? [
          {
            code: 'VALVE_FACTOR_OFF',
            path: 'loss',
            given: loss,
            allowed: '2, 5, 10 at 80; 5 at 90; 5, 10 at 100 psig',
          },
        ]
      : [],
  compute: ({ pressure, loss }: ValveFactorInputs) => ({
    compressionFactor: compressionFactors[pressure],
    dropFactor: dropFactors[pressure]?.[loss] ?? Number.NaN,
  }),
});
