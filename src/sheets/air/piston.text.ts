import { notes, problems } from './notes.text.ts';

/** Words that the sheets of pistons share, in English. */
export const pistonWords = {
  direction: 'Direction',
  bore: 'Bore',
  rod: 'Rod',
  backPressure: 'Pressure on the side that exhausts',
  efficiency: 'Share of the force that friction leaves',
  spring: 'Force of the spring',
  load: 'Load',
} as const;

export const pistonNotes = {
  CYLINDER_FRICTION_SHARE: notes.CYLINDER_FRICTION_SHARE,
  PISTON_LOWEST_PRESSURE:
    'Count with the lowest pressure at the cylinder during the cycle, not with the setting: systems of 100 psi drop to 80 psi or less at the peak (trade magazine).',
  CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
} as const;

export const pistonProblems = { CYLINDER_ROD: problems.CYLINDER_ROD } as const;
export const directionWords = { extend: 'extend', retract: 'retract' } as const;
