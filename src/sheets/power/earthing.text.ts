import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const earthingText: SheetText = {
  en: {
    title: 'Earthing and phase arrangement',
    about:
      'What the earthing and the phase arrangement of a supply mean for a line that comes from elsewhere.',
    inputs: { arrangement: 'Arrangement', voltage: 'Voltage, line to line' },
    outputs: {
      highest: 'Highest line to earth',
      lowest: 'Lowest line to earth',
      afterFault: 'Highest line to earth after a first earth fault',
    },
    options: {
      arrangement: {
        'tn-s': 'TN-S',
        'tn-c-s': 'TN-C-S',
        tt: 'TT',
        'grounded-wye': 'solidly grounded wye',
        it: 'IT',
        'ungrounded-delta': 'ungrounded delta',
        'resistance-grounded': 'resistance-grounded wye',
        'corner-grounded-delta': 'corner-grounded delta',
        'high-leg-delta': 'high-leg delta',
      },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      EARTHING_ASK:
        'Ask the site: how many wires, is there a neutral, where is it earthed, which voltages were measured between all lines and to earth, by whom and when. Earth is never used as neutral.',
      EARTHING_TN:
        'Each line stands at the same voltage to earth; a fault opens the device if the loop is low enough.',
      EARTHING_TN_C_S:
        'Neutral and protective conductor are one up to a point of the installation, and must be apart from there on: ask where; never joined again in the machine.',
      EARTHING_TT:
        'The site has its own electrode and a fault gives little current: disconnection rests on residual-current devices.',
      EARTHING_UNEARTHED:
        'A first earth fault opens nothing and lifts the other lines to the full line voltage: a monitor must report it. Line-to-neutral loads do not belong here.',
      EARTHING_RESISTANCE:
        'A first fault gives a small current only; line-to-neutral loads are usually not allowed, and the other lines rise to the full line voltage.',
      EARTHING_CORNER:
        'One line is at earth and two at the full line voltage: it must be known which, and it gets no single-pole device.',
      EARTHING_HIGH_LEG:
        'One line stands 1.73 times as high to neutral as the other two: it is never connected to a circuit of the lower voltage, and a control circuit taken from it burns. Ask which line it is.',
      EARTHING_SLASH_RATING:
        'Breakers and drives with a slash rating, 480Y/277 or 120/240 for example, are not allowed where a line can stand this high to earth.',
      EARTHING_DRIVE_FILTERS:
        'Filters and varistors of drives to earth are made for a grounded wye: the makers want them taken off here (from memory).',
      EARTHING_RESIDUAL_DEVICE:
        'Drives leak to earth and may carry direct current in a fault: a 30 mA device trips or goes blind. Type B or a higher setting is a matter of the local rule (from memory). A machine made without neutral may need a control transformer.',
    },
  },
};
