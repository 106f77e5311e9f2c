import type { GoalPresets } from '../../floor/fill/index.ts';

/** Counts for the level that were found. */
export type LevelGoal = Extract<GoalPresets, { readonly goal: 'level'; readonly presets: unknown }>;

/** Counts for the contents on the label that were found. */
export type VolumeGoal = Extract<GoalPresets, { readonly goal: 'volume'; readonly presets: unknown }>;
