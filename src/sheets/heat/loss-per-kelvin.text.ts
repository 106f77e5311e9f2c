import type { SheetText } from '../sheet-text.ts';

export const lossPerKelvinText: SheetText = {
  en: {
    title: 'Heat lost for each kelvin',
    about: 'Heat that a bath loses for each kelvin over its room, from what it loses when warm.',
    inputs: { loss: 'Heat lost when warm', bath: 'Temperature of the bath', room: 'Temperature of the room' },
    outputs: { heatTransfer: 'Heat lost for each kelvin' },
    notes: {
      LOSS_WHILE_WARMING:
        'Evaporation grows faster than the difference: while it warms up the bath loses less than this says.',
    },
    problems: { LOSS_NO_DIFFERENCE: '{path}: a room as warm as the bath takes no heat from it.' },
  },
};
