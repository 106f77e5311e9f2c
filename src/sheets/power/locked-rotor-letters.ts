import type { Source } from '../frame.ts';

export const lockedRotorTable: Source = {
  title: 'NEC table 430.7(B), locked-rotor code letters',
  edition: '2008',
  place: 'public transcription',
  mark: 'read',
};

/** kVA per hp with locked rotor; V is open upwards. Letters I, O and Q are not used. */
export const lockedRotorLetters = {
  A: [0, 3.14],
  B: [3.15, 3.54],
  C: [3.55, 3.99],
  D: [4, 4.49],
  E: [4.5, 4.99],
  F: [5, 5.59],
  G: [5.6, 6.29],
  H: [6.3, 7.09],
  J: [7.1, 7.99],
  K: [8, 8.99],
  L: [9, 9.99],
  M: [10, 11.19],
  N: [11.2, 12.49],
  P: [12.5, 13.99],
  R: [14, 15.99],
  S: [16, 17.99],
  T: [18, 19.99],
  U: [20, 22.39],
  V: [22.4, undefined],
} as const;

export type LockedRotorLetter = keyof typeof lockedRotorLetters;
export const letters = Object.keys(lockedRotorLetters) as LockedRotorLetter[];
