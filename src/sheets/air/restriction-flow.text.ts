import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const restrictionFlowText: SheetText = {
  en: {
    title: 'Flow through a valve, a tube or a fitting',
    about:
      'Free air that a component passes by its sonic conductance and critical pressure ratio (ISO 6358).',
    inputs: {
      conductance: 'Sonic conductance C',
      criticalRatio: 'Critical pressure ratio b',
      upstream: 'Pressure before',
      downstream: 'Pressure after',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature before',
    },
    outputs: {
      flow: 'Flow',
      chokedFlow: 'Flow when choked, the most',
      pressureRatio: 'Pressure ratio',
      massFlow: 'Mass flow',
      choked: 'Choked',
    },
    notes: {
      RESTRICTION_BACKWARDS: 'The pressure after is higher: the air flows back.',
      RESTRICTION_NOZZLE: notes.RESTRICTION_NOZZLE,
      RESTRICTION_DENSITY:
        'The mass counts 1.185 kg in a cubic metre, the figure printed with ISO 6358 (memory); arithmetic gives 1.1815 at 65 % humidity and 1.1884 dry.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: { AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM },
    options: { choked: { choked: 'choked', 'not choked': 'not choked' } },
  },
};
