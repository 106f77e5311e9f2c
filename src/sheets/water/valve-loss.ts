import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { densities, flowCoefficients, flows } from './bounds.ts';
import { kvStandard } from './sources.ts';
import { valveLoss } from './valve-flow.ts';

export const valveLossSheet = defineSheet({
  id: 'water/valve-loss',
  version: 1,
  inputs: {
    kv: numberField('flowCoefficient', 'K_v', flowCoefficients),
    flow: numberField('volumeFlow', 'Q', flows),
    density: numberField('density', '\\rho', densities),
  },
  outputs: { loss: numberField('pressureDifference', '\\Delta p') },
  formula: ['\\Delta p = 10^5 \\frac{\\rho}{1000} \\left( \\frac{3600 Q}{K_v} \\right)^2'],
  limits: [],
  sources: [kvStandard],
  compute: (i: { readonly kv: number; readonly flow: number; readonly density: number }) => ({
    loss: valveLoss(i.kv, i.flow, i.density),
  }),
});
