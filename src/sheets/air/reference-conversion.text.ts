import type { SheetText } from '../sheet-text.ts';
import { countingWords, referenceWords } from './reference-states.ts';

export const referenceConversionText: SheetText = {
  en: {
    title: 'Free air at another reference state',
    about:
      'A flow of free air is a mass flow that names its state badly: the same air counted at another reference state.',
    inputs: {
      flow: 'Flow as it is printed',
      from: 'State that it is printed for',
      to: 'State wanted',
      counting: 'Humidity of the state',
    },
    outputs: { flow: 'Flow at the state wanted', dryMassFlow: 'Dry air' },
    notes: {
      REFERENCE_ANR_DISAGREES:
        'ANR is taken as 100 kPa, 20 °C, 65 % (ISO 8778:1990, read second hand); one encyclopedia prints 101.3 kPa, which is 1.3 % denser.',
      REFERENCE_SCFM_MIXED:
        'scfm has no one meaning: 1 scfm is 1.562 m³/h at 0 °C and 1 atm by the compressor makers’ state, 1.607 by the gas trade’s. A page that gives 1.70 mixes two states.',
    },
    options: { from: referenceWords, to: referenceWords, counting: countingWords },
  },
};
