import type { SheetText } from '../sheet-text.ts';

export const tankDrawDownText: SheetText = {
  en: {
    title: 'Draw-down of a tank',
    about:
      "Time in which a tank's level goes from one head to another through an outlet, with a steady inflow or without.",
    inputs: {
      planArea: 'Plan area of the tank',
      bore: 'Diameter of the outlet',
      dischargeCoefficient: 'Coefficient of discharge',
      startHead: 'Head at first',
      endHead: 'Head in the end',
      inflow: 'Inflow',
    },
    outputs: {
      time: 'Time',
      balanceHead: 'Head at which inflow and outflow balance',
      firstFlow: 'Flow at first',
    },
    notes: {
      DRAWDOWN_NEAR_OUTLET:
        'The level comes nearer to the outlet than its diameter: air is drawn in and the flow falls short.',
    },
    problems: { DRAWDOWN_NEVER: 'The level never gets there: inflow and outflow balance before.' },
  },
};
