import type { Source } from '../frame.ts';

/** Sources that more than one sheet of safety cites. */
export const iso13855: Source = {
  title: 'ISO 13855, positioning of safeguards',
  edition: '2010',
  place: 'as given in public manuals of light curtains and a public guide',
  mark: 'read',
};
export const iso13855Draft: Source = {
  title: 'ISO 13855',
  edition: '2024 and its draft',
  place: 'public account of an engineering office, 2023 to 2024; terms of the edition from memory',
  mark: 'read',
};
export const iso13849: Source = {
  title: 'ISO 13849-1, printed as AS 4024.1503',
  edition: '2006',
  place: 'public transcription: 4.5, annexes C, D, I, K',
  mark: 'read',
};
export const iso13849Examples: Source = {
  title: 'ISO 13849-1, printed as AS 4024.1503',
  edition: '2006',
  place: 'examples of annexes C, D and I; public transcription',
  mark: 'read',
};
export const byHand: Source = {
  title: 'hand calculation from the formula',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const referenceCases: Source = {
  title: 'reference cases of acceptance and hand-over',
  place: 'independent script',
  mark: 'computed',
};
