import type { SheetText } from '../sheet-text.ts';
import { notes as waterNotes } from '../water/notes.text.ts';
import { notes } from './notes.text.ts';

export const lineLossText: SheetText = {
  en: {
    title: 'Pressure loss of an air pipe',
    about:
      'Pressure that air loses along a pipe or hose with its fittings, as it expands on the way; the usual empirical forms beside it.',
    inputs: {
      flow: 'Free air',
      pressure: 'Pressure at the inlet',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
      bore: 'Bore',
      length: 'Length',
      fittings: 'Equivalent length of the fittings',
      roughness: 'Roughness',
    },
    outputs: {
      loss: 'Pressure loss',
      outletPressure: 'Pressure at the outlet',
      reynolds: 'Reynolds number',
      frictionFactor: 'Friction factor (Darcy)',
      outletVelocity: 'Velocity at the outlet',
      empiricalLoss: 'Loss by the empirical form with 7.57e4',
      empiricalLossHigh: 'Loss by the empirical form with 450',
    },
    notes: {
      FRICTION_AIR_TRANSITION: notes.FRICTION_AIR_TRANSITION,
      AIR_VELOCITY_HIGH: notes.AIR_VELOCITY_HIGH,
      AIR_LOSS_TENTH:
        'More than a tenth of the gauge pressure is lost; from the receiver to the point of use it should be less (trade journal). At 100 psi, 2 psi cost about 1 % of the power.',
      AIR_OUTLET_BELOW_ATMOSPHERE: notes.AIR_OUTLET_BELOW_ATMOSPHERE,
      AIR_EMPIRICAL_DISAGREE:
        'Sources disagree by 11 %: against a handbook table the form with 7.57e4 (read) is 6 % low to 4 % high, the one with 450 (memory) 5 to 17 % high, the equation used here within 2 %.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      AIR_PIPE_CHOKES:
        'The pipe chokes: it cannot carry this flow at this pressure, whatever lies behind it.',
      PIPE_ROUGHNESS: waterNotes.PIPE_ROUGHNESS,
    },
  },
};
