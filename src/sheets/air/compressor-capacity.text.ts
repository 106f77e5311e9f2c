import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';
import { countingWords } from './reference-states.ts';

export const compressorCapacityText: SheetText = {
  en: {
    title: 'Compressor at the site',
    about:
      'Free air delivery that a demand needs at the altitude and intake of the site, and how much of its compressor that is.',
    inputs: {
      demand: 'Demand, normal air',
      counting: 'Humidity of normal air',
      altitude: 'Altitude',
      temperature: 'Intake temperature',
      relativeHumidity: 'Intake relative humidity',
      delivery: 'Free air delivery of the compressor',
      leak: 'Allowance for leaks',
      growth: 'Allowance for growth',
      purge: 'Share that purges the dryer',
      duty: 'Duty allowed',
    },
    outputs: {
      atmosphere: 'Atmospheric pressure',
      dryMassFlow: 'Dry air',
      freeAirNeeded: 'Free air delivery of the demand alone',
      installedNeeded: 'Free air delivery to install',
      capacity: 'What the compressor gives here, normal air',
      loadShare: 'Load with leaks and purge',
    },
    notes: {
      COMPRESSOR_OVERLOADED:
        'The compressor cannot keep up: the pressure falls until demand and delivery meet.',
      COMPRESSOR_NO_RESERVE: 'It keeps up, but without the growth and the duty that are allowed for.',
      COMPRESSOR_ALTITUDE: 'Over 1 000 m the motor loses power too: ask the maker.',
      COMPRESSOR_ALLOWANCES:
        'The allowances are habits (memory): leaks 0.10, growth 0.10 to 0.25, purge of a heatless desiccant dryer 0.15 to 0.20 at 7 bar(g), duty up to 0.7 for a piston, 0.9 to 1.0 for a screw.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      AIR_REFERENCE_HUMID: notes.AIR_REFERENCE_HUMID,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    options: { counting: countingWords },
  },
};
