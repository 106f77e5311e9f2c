import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, caution } from './caution.ts';

/**
 * Time until a capacitor has discharged to a voltage.
 *
 * Method   u = U_pk e^(-t/(R C)), so t = R C ln(U_pk/u); none where it starts lower
 * Symbols  U_pk  peak  scalar  V: sqrt(2) U of a filter, link voltage of a converter
 *          R  scalar  ohm;  C  scalar  F;  u  scalar  V
 * Returns  s
 * Cost     O(1)
 * Source   discharge of a capacitor
 */
export const dischargeTime = (
  peak: number,
  resistance: number,
  capacitance: number,
  until: number,
): number => (peak <= until ? 0 : resistance * capacitance * Math.log(peak / until));

interface ResidualVoltageInputs {
  readonly peak: number;
  readonly resistance: number;
  readonly capacitance: number;
  readonly allowed: number;
}

/** What is stored for at most this charge is left out of the rule, C. */
const smallCharge = 60e-6;
const ruleTime = 5;

export const residualVoltageSheet = defineSheet({
  id: 'power/residual-voltage',
  version: 1,
  inputs: {
    peak: numberField('voltage', 'U_{pk}', { least: 1, most: 2000 }),
    resistance: numberField('resistance', 'R', { least: 1, most: 1e9 }),
    capacitance: numberField('capacitance', 'C', { least: 1e-12, most: 10 }),
    allowed: numberField('voltage', 'u', { least: 1, most: 120, assumed: 60 }),
  },
  outputs: {
    time: numberField('time', 't'),
    afterFiveSeconds: numberField('voltage', 'u_5'),
  },
  formula: ['t = R C \\ln \\frac{U_{pk}}{u}, \\quad u_5 = U_{pk}\\, e^{-5\\,\\mathrm{s} / (R C)}'],
  limits: [
    caution,
    always('RESIDUAL_RULE'),
    {
      code: 'RESIDUAL_SLOW',
      broken: ({ peak, capacitance }, { time }) => time > ruleTime && peak * capacitance > smallCharge,
    },
    { code: 'RESIDUAL_CHARGE_SMALL', broken: ({ peak, capacitance }) => peak * capacitance <= smallCharge },
  ],
  sources: [
    { title: 'IEC 60204-1', edition: '2018', place: '6.2.4, public transcription', mark: 'read' },
    { title: 'discharge of a capacitor', place: 'derived', mark: 'computed' },
  ],
  compute: (i: ResidualVoltageInputs) => ({
    time: dischargeTime(i.peak, i.resistance, i.capacitance, i.allowed),
    afterFiveSeconds: i.peak * Math.exp(-ruleTime / (i.resistance * i.capacitance)),
  }),
});
