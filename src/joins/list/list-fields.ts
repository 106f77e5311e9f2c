/** What a column of a list of joins can hold. */
export const listFields = [
  'tag',
  'label',
  'kind',
  'name',
  'from',
  'to',
  'fromSection',
  'toSection',
  'size',
  'fromSize',
  'toSize',
  'colour',
  'fromColour',
  'toColour',
  'cable',
  'core',
  'potential',
  'box',
  'split',
  'length',
  'torque',
  'test',
  'note',
] as const;

export type ListField = (typeof listFields)[number];
