import type { SheetText } from '../sheet-text.ts';

export const overflowWeirText: SheetText = {
  en: {
    title: 'Overflow pipe',
    about:
      'Flow into a vertical overflow pipe. It must pass the whole inflow with the float valve stuck open at the highest pressure.',
    inputs: {
      bore: 'Bore',
      head: 'Surface over the rim',
      dischargeCoefficient: 'Coefficient of discharge as a hole',
    },
    outputs: { flow: 'Flow' },
    notes: {
      OVERFLOW_DROWNING:
        'The surface stands higher than a fifth of the bore: the rim drowns, the flow is indicative.',
    },
  },
};
