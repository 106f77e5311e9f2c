import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { areas, bores, dischargeCoefficients, flows, heads } from './bounds.ts';
import { orificeConstant } from './orifice.ts';
import { closedForms } from './sources.ts';

/** -(a + ln|1 - a|) = a^2/2 + a^3/3 + ...; the series where the two terms would cancel. */
const lag = (a: number): number =>
  a < 1e-3 ? a * a * (0.5 + a * (1 / 3 + a * (0.25 + a * 0.2))) : -a - Math.log(Math.abs(1 - a));

/**
 * Time in which a tank's level goes from one head to another through an outlet with a steady inflow.
 *
 * Method   A dh/dt = Q_in - k sqrt(h):
 *          t = (2A/k) [ sqrt(h1) - sqrt(h2) + (Q_in/k) ln( (Q_in - k sqrt(h1))/(Q_in - k sqrt(h2)) ) ]
 * Symbols  A     planArea   scalar  m2            > 0, the same at every level
 *          k     constant   scalar  m3/s per m^1/2  > 0, of `orificeConstant`
 *          h1    startHead  scalar  m             >= 0
 *          h2    endHead    scalar  m             >= 0, on this side of the balance level (Q_in/k)^2
 *          Q_in  inflow     scalar  m3/s          >= 0
 * Returns  time, s; NaN or infinity where the level never gets there, which the sheet refuses beforehand
 * Assumes  quasi-steady outflow, free outlet
 * Cost     O(1)
 * Source   separation of variables
 */
export const drawDownTime = (
  planArea: number,
  constant: number,
  startHead: number,
  endHead: number,
  inflow: number,
): number => {
  const from = Math.sqrt(startHead);
  const to = Math.sqrt(endHead);
  if (inflow === 0) return ((2 * planArea) / constant) * (from - to);
  const scale = inflow / constant;
  return ((2 * planArea) / constant) * scale * (lag(to / scale) - lag(from / scale));
};

/** Head at which an outlet passes just what flows in: (Q_in/k)^2, m. Reached only in endless time. */
export const balanceHead = (constant: number, inflow: number): number => (inflow / constant) ** 2;

interface DrawDownInputs {
  readonly planArea: number;
  readonly bore: number;
  readonly dischargeCoefficient: number;
  readonly startHead: number;
  readonly endHead: number;
  readonly inflow: number;
}

export const tankDrawDownSheet = defineSheet({
  id: 'water/tank-draw-down',
  version: 1,
  inputs: {
    planArea: numberField('area', 'A_t', areas),
    bore: numberField('length', 'D', bores),
    dischargeCoefficient: numberField('ratio', 'C_d', { ...dischargeCoefficients, assumed: 0.62 }),
    startHead: numberField('length', 'h_1', heads),
    endHead: numberField('length', 'h_2', heads),
    inflow: numberField('volumeFlow', 'Q_{in}', { ...flows, assumed: 0 }),
  },
  outputs: {
    time: numberField('time', 't'),
    balanceHead: numberField('length', 'h_\\infty'),
    firstFlow: numberField('volumeFlow', 'Q_1'),
  },
  formula: [
    'k = C_d \\frac{\\pi D^2}{4} \\sqrt{2 g}, \\quad Q = k \\sqrt{h}',
    't = \\frac{2 A_t}{k} \\left[ \\sqrt{h_1} - \\sqrt{h_2} + \\frac{Q_{in}}{k} \\ln \\frac{Q_{in} - k \\sqrt{h_1}}{Q_{in} - k \\sqrt{h_2}} \\right]',
    'h_\\infty = \\left( \\frac{Q_{in}}{k} \\right)^2',
  ],
  limits: [
    {
      code: 'DRAWDOWN_NEAR_OUTLET',
      broken: ({ endHead, bore }) => endHead < bore,
    },
  ],
  sources: [closedForms],
  check: ({ bore, dischargeCoefficient, startHead, endHead, inflow }) => {
    const balance = balanceHead(orificeConstant(bore, dischargeCoefficient), inflow);
    const never =
      startHead !== endHead && (endHead < startHead ? inflow > 0 && endHead <= balance : endHead >= balance);
    return never
      ? [
          {
            code: 'DRAWDOWN_NEVER',
            path: 'endHead',
            given: endHead,
            allowed: endHead < startHead ? `> ${balance}` : `< ${balance}`,
          },
        ]
      : [];
  },
  compute: (i: DrawDownInputs) => {
    const k = orificeConstant(i.bore, i.dischargeCoefficient);
    return {
      time: i.startHead === i.endHead ? 0 : drawDownTime(i.planArea, k, i.startHead, i.endHead, i.inflow),
      balanceHead: balanceHead(k, i.inflow),
      firstFlow: k * Math.sqrt(i.startHead),
    };
  },
});
