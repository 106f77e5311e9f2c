import type { SheetText } from '../sheet-text.ts';

export const volumeAtLevelText: SheetText = {
  en: {
    title: 'Volume at a level',
    about: 'Volume below a level by the profile of the bottle, and what a millimetre is worth there.',
    inputs: {
      heights: 'Heights of the profile above the inside bottom',
      volumes: 'Volume up to each height',
      level: 'Level above the inside bottom',
    },
    outputs: { volume: 'Volume', millimetre: 'Volume of one millimetre there' },
    notes: {
      PROFILE_STRAIGHT:
        'Straight between the points of the profile: at a shoulder that is good only where the points stand close.',
    },
    problems: {
      PROFILE_NOT_RISING: '{path}: the profile does not rise with its heights at {given}.',
      PROFILE_LEVEL_ABOVE: '{path}: above the highest point of the profile. Allowed: {allowed}.',
    },
  },
};
