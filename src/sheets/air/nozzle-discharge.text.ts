import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const nozzleDischargeText: SheetText = {
  en: {
    title: 'Air through a nozzle or a leak',
    about:
      'Free air that blow-off nozzles, rinse jets or a hole let out to the atmosphere, open and on average.',
    inputs: {
      diameter: 'Diameter',
      count: 'How many',
      coefficient: 'Discharge coefficient',
      pressure: 'Pressure before it',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature before it',
      openShare: 'Share of the time that it is open',
    },
    outputs: {
      flow: 'Flow while open',
      averageFlow: 'Average flow',
      massFlow: 'Mass flow while open',
      choked: 'Choked',
    },
    notes: {
      NOZZLE_COEFFICIENT:
        'Sources disagree on the coefficient: 0.97 rounded and 0.65 sharp-edged (handbook table), 0.64 (a navy table), 0.61 (a sheet of the US DOE, memory). Flow goes with it.',
      AIR_CLEANING_RULES:
        'For cleaning with air, US 29 CFR 1910.242(b) asks for under 30 psi at a dead-ended nozzle with chip guarding and personal protection; California forbids over 10 psig on clothing that is worn. Check the local rule.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    options: { choked: { choked: 'choked', 'not choked': 'not choked' } },
  },
};
