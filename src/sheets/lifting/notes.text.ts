/** Sentences that more than one sheet of lifting says, in English. */
const notes = {
  CAUTION_LIFTING:
    'Check aid only. A qualified rigger plans and leads the lift by the local code, with gear that carries its plate; nobody stands below.',
  LIFTING_DRAINED: 'Drained and stripped as it will hang: liquid left in a tank moves the centre of mass.',
} as const;

export const notesOf = (...codes: readonly (keyof typeof notes)[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, notes[code]]));
