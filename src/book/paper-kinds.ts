/** Papers of a book, in the order in which a hand-over wants them. */
export const paperKinds = [
  'prediction',
  'preparation',
  'protocol',
  'settings',
  'card',
  'certificate',
  'dossier',
  'labels',
  'schedule',
] as const;

export type PaperKind = (typeof paperKinds)[number];

/** Papers that speak of one floor; without one it is that which the line is bound for. */
export const ofOneFloor: ReadonlySet<PaperKind> = new Set([
  'preparation',
  'protocol',
  'card',
  'certificate',
  'schedule',
]);
