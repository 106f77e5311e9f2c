import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, faultCurrents } from './bounds.ts';
import { always, caution } from './caution.ts';

/** Running motors feed a fault for its first cycles with about this many times their full-load current. */
const motorShare = 4;

/**
 * Fault current at a panel with what running motors add.
 *
 * Method   I = I_k + 4 sum(I_FLA)
 * Symbols  fault  scalar  A from the supply;  motors  scalar  A, sum of the full-load currents that run
 * Returns  A
 * Cost     O(1)
 * Source   point-to-point method, motor contribution
 */
export const panelFault = (fault: number, motors: number): number => fault + motorShare * motors;

interface PanelFaultInputs {
  readonly fault: number;
  readonly motors: number;
  readonly rating: number;
}

export const panelFaultSheet = defineSheet({
  id: 'power/panel-fault',
  version: 1,
  inputs: {
    fault: numberField('current', 'I_k', faultCurrents),
    motors: numberField('current', '\\Sigma I_{\\mathrm{FLA}}', { ...currents, assumed: 0 }),
    rating: numberField('current', 'I_{\\mathrm{SCCR}}', faultCurrents),
  },
  outputs: {
    available: numberField('current', 'I_a'),
    margin: numberField('current', 'm'),
    share: numberField('ratio', 'I_a / I_{\\mathrm{SCCR}}'),
  },
  formula: [
    'I_a = I_k + 4\\, \\Sigma I_{\\mathrm{FLA}}, \\quad m = I_{\\mathrm{SCCR}} - I_a',
    '\\frac{I_a}{I_{\\mathrm{SCCR}}} \\le 1',
  ],
  limits: [
    caution,
    always('PANEL_WEAKEST_PART'),
    { code: 'PANEL_RATING_EXCEEDED', broken: (_, { margin }) => margin < 0 },
  ],
  sources: [
    {
      title: 'formula page on fault currents: motors add four times their full-load current',
      place: 'public page',
      mark: 'read',
    },
    {
      title: 'article of an inspectors’ magazine on short-circuit current ratings',
      edition: 'March 2012',
      place: 'rating of a panel is that of its weakest power component',
      mark: 'read',
    },
  ],
  compute: (i: PanelFaultInputs) => {
    const available = panelFault(i.fault, i.motors);
    return { available, margin: i.rating - available, share: available / i.rating };
  },
});
