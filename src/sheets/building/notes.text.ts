/** Sentences that more than one sheet of building says, in English. */
const notes = {
  CAUTION_STRUCTURE:
    'Check aid only. What the floor, the slab or a deck carries is decided by a structural engineer with the building’s papers; local codes rule.',
  CAUTION_MOVING:
    'Moving heavy sections crushes people: a competent mover decides gear, path and crew by local rules; nobody stands below or downhill.',
  UNEVEN_FLOOR:
    'A floor is never flat: of four feet three carry, now these, now those, so each must stand a third of the mass.',
  GEAR_HEIGHT:
    'Pallet truck, skates or dollies lift the section: their height counts, and a truck lifts further to drive.',
} as const;

export const notesOf = (...codes: readonly (keyof typeof notes)[]): Readonly<Record<string, string>> =>
  Object.fromEntries(codes.map((code) => [code, notes[code]]));
