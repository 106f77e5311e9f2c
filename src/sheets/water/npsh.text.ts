import type { SheetText } from '../sheet-text.ts';

export const npshText: SheetText = {
  en: {
    title: 'Net positive suction head',
    about: 'Head over boiling that a pump is offered at its inlet.',
    inputs: {
      atmosphere: 'Atmospheric pressure',
      tankPressure: 'Pressure over the liquid drawn from',
      vapourPressure: 'Vapour pressure',
      suctionHeight: 'Surface over the pump',
      suctionLoss: 'Loss of the suction line',
      density: 'Density',
    },
    outputs: { npsh: 'NPSH available' },
    notes: {
      NPSH_NEGATIVE: 'Nothing is left: the liquid boils before it reaches the pump.',
      NPSH_MARGIN: 'Must exceed what the pump requires by at least 0.5 m, or 10 to 30 %.',
    },
    problems: { NPSH_BOILS: 'The liquid boils in the tank.' },
  },
};
