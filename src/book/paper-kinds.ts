/** Papers of a book, in the order in which a hand-over wants them. */
export const paperKinds = [
  'prediction',
  'preparation',
  'protocol',
  'settings',
  'card',
  'fill',
  'open',
  'certificate',
  'dossier',
  'labels',
  'packing',
  'schedule',
] as const;

export type PaperKind = (typeof paperKinds)[number];

/** Papers that are filled in by people of two languages: each can stand beside the other on them. */
export const inTwoLanguages: ReadonlySet<PaperKind> = new Set(['preparation', 'protocol', 'schedule']);

/** Papers that speak of one floor; without one it is that which the line is bound for. */
export const ofOneFloor: ReadonlySet<PaperKind> = new Set([
  'preparation',
  'protocol',
  'card',
  'fill',
  'certificate',
  'packing',
  'schedule',
]);
