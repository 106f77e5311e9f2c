import type { SheetText } from '../sheet-text.ts';

export const inertiaLagText: SheetText = {
  en: {
    title: 'Lag of a column set moving',
    about:
      'How long the liquid in a run takes to come up to speed when a valve opens, and the time a fill loses by it.',
    inputs: {
      lengths: 'Lengths',
      bores: 'Bores',
      flow: 'Steady flow',
      head: 'Head that the steady flow uses up',
      time: 'Time since opening',
    },
    outputs: {
      timeConstant: 'Time constant',
      share: 'Share of the steady flow by then',
      lostTime: 'Time lost by then',
      lostInAll: 'Time lost in the end',
    },
    notes: { INERTIA_NOT_STARTED: 'By then the flow is still under three quarters of the steady one.' },
  },
};
