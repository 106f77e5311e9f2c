/** Words of the classes and notes that the sheets of purity share, in English. */
export const classWords = {
  '0': '0 (as agreed)',
  '1': '1',
  '2': '2',
  '3': '3',
  '4': '4',
  '5': '5',
  '6': '6',
  '7': '7',
  '8': '8',
  '9': '9',
  X: 'X (worse than every class)',
} as const;

export const purityNotes = {
  PURITY_CLASS_ZERO:
    'Class 0 is stricter than 1 and whatever user and supplier agree in writing; no table has its limits.',
  PURITY_SECOND_HAND:
    'Limits of ISO 8573-1:2010 as three public reproductions print them; concentrations at 20 °C, 1 bar absolute, dry.',
} as const;
