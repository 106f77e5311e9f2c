import type { SheetText } from '../sheet-text.ts';
import { ctOutputs, lookUpWords, notesOf } from './notes.text.ts';

export const otherCtText: SheetText = {
  en: {
    title: 'CT by ozone, chlorine dioxide or chloramine',
    about:
      'CT that the tables of the US EPA print for other disinfectants, the time that it asks, and the logs that a contact reaches.',
    inputs: {
      disinfectant: 'Disinfectant',
      target: 'Against',
      temperature: 'Water temperature',
      residual: 'Disinfectant left at the end of the contact',
      time: 'Contact',
      logs: 'Logs wanted',
      lookUp: 'Look-up',
    },
    outputs: ctOutputs,
    notes: {
      ...notesOf(
        'HYGIENE_AUTHORITY',
        'CT_WARM',
        'CT_INTERPOLATED',
        'CT_NOT_FOR_RINSE',
        'CT_RESIDUAL',
        'CAUTION_CHEMICAL',
      ),
      CT_RULE_NO_LOGS:
        'A rule of 0.1 mg/L for 5 min is no fixed number of logs: at 20 °C it is 4 of viruses and 2.1 of Giardia, at 15 °C 3.3 and 1.6.',
    },
    options: {
      disinfectant: { ozone: 'ozone', 'chlorine dioxide': 'chlorine dioxide', chloramine: 'chloramine' },
      target: { giardia: 'Giardia', viruses: 'viruses' },
      lookUp: lookUpWords,
    },
  },
};
