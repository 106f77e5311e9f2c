import type { SheetText } from '../sheet-text.ts';

export const manifoldText: SheetText = {
  en: {
    title: 'Lanes on one manifold',
    about: 'Flow of each of n equal open lanes that share one line, lumped into two Kv values.',
    inputs: {
      pressureDifference: 'Pressure difference from source to jet',
      kv: 'Kv of one lane',
      commonKv: 'Kv of the common line',
      lanes: 'Lanes in all',
      open: 'Lanes open',
      density: 'Density',
    },
    outputs: {
      laneFlow: 'Flow of one lane',
      flow: 'Flow of all',
      aloneOverAll: 'Flow of a lane alone over one of all',
      designIndex: 'Loss of the common line over that of the lane, all open',
    },
    notes: {
      MANIFOLD_UNEVEN:
        'A lane alone runs more than 5 % faster than with all open: doses move as neighbours close.',
    },
    problems: { MANIFOLD_OPEN: 'No more lanes can be open than there are.' },
  },
};
