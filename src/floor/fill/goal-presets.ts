import type { Allowance } from '../../fill/allowances.ts';
import type { LanesEstimate } from '../../fill/estimate-lanes.ts';
import { type LevelPresets, presetsForLevel } from '../../fill/presets-for-level.ts';
import { presetsForVolume, type VolumePreset } from '../../fill/presets-for-volume.ts';
import { atLeastNothing, type Estimated, withinOf } from '../../fill/student-sum.ts';
import type { BookReader } from '../book-reader.ts';
import { type AgreedContents, deficiencyOf, referenceOf } from './agreed-contents.ts';
import type { CapacityFound } from './capacity-of.ts';
import type { FillFloor } from './fill-floor.ts';
import { densityAt } from './product-density.ts';

export type FillGoal = 'level' | 'volume';

/** What is wanted of the counts. */
export interface PresetAsk {
  readonly goal: FillGoal;
  /** Confidence of a tolerance bound; without it one bottle drawn by chance is spoken of. */
  readonly tolerance?: number;
  /** Maximum allowable variation, m3, for the handbook that has its own. */
  readonly variation?: number;
  /** m3, in the place of what the book says. */
  readonly label?: number;
}

/** Counts between which the one lies that would just do, by what is not sure of the mean volume. */
export interface CountRange {
  readonly lane: string;
  readonly lower: number;
  readonly upper: number;
}

/** Why no count can be named; `place` would answer. */
export type NoPreset = 'levelMissing' | 'labelMissing' | 'deficiencyMissing' | 'densityMissing' | 'neverEnds';

export type GoalPresets =
  | {
      readonly goal: 'level';
      readonly capacity: CapacityFound;
      readonly share: number;
      readonly presets: LevelPresets;
      readonly ranges: readonly CountRange[];
    }
  | {
      readonly goal: 'volume';
      /** On the label, at the reference temperature and at that of the fill, m3. */
      readonly label: number;
      readonly labelHere: number;
      readonly deficiency: number;
      readonly presets: readonly VolumePreset[];
      readonly ranges: readonly CountRange[];
    }
  | { readonly goal: FillGoal; readonly none: NoPreset };

/** Where the counts are to be set. */
export interface PresetPlace {
  readonly reader: BookReader;
  readonly floor: FillFloor;
  readonly estimate: LanesEstimate;
  readonly allowances: readonly Allowance[];
  readonly agreed: AgreedContents;
  readonly capacity: CapacityFound | undefined;
  readonly confidence?: number;
}

const usualShare = 0.995;
/** Of the ranges, as of every interval. */
const usualConfidence = 0.9;

const rangesOf = (
  { estimate, confidence = usualConfidence }: PresetPlace,
  presets: readonly { readonly lane: string; readonly preset: number; readonly mean: Estimated }[],
): readonly CountRange[] =>
  presets.map(({ lane, preset, mean }, i) => {
    const volume = atLeastNothing(withinOf(mean, confidence));
    const pulses = estimate.lanes[i]!.pulses.value;
    // where the mean turns out higher, fewer counts would have done
    return {
      lane,
      lower: Math.max(1, Math.floor(preset - (volume.upper - volume.value) * pulses)),
      upper: Math.ceil(preset + (volume.value - volume.lower) * pulses),
    };
  });

const forLevel = (place: PresetPlace, { tolerance }: PresetAsk): GoalPresets => {
  const { capacity, agreed, estimate, floor, allowances } = place;
  if (capacity === undefined) return { goal: 'level', none: 'levelMissing' };
  const share = agreed.levelGoal ?? usualShare;
  const presets = presetsForLevel({
    estimate,
    floor: floor.uncertain!,
    allowances,
    capacity: capacity.capacity,
    goal: share,
    ...(tolerance === undefined ? {} : { rule: { kind: 'tolerance', confidence: tolerance } }),
    ...(agreed.shift === undefined ? {} : { shift: agreed.shift }),
  });
  if (presets === undefined) return { goal: 'level', none: 'neverEnds' };
  return { goal: 'level', capacity, share, presets, ranges: rangesOf(place, presets.lanes) };
};

const forVolume = (place: PresetPlace, { variation, label: asked }: PresetAsk): GoalPresets => {
  const { reader, floor, agreed, estimate, allowances } = place;
  const { inputs } = floor;
  const label = asked ?? reader.number(`${inputs.formatPath}/label`, 'volume');
  if (label === undefined) return { goal: 'volume', none: 'labelMissing' };
  const deficiency = deficiencyOf(agreed, label, variation);
  if (deficiency === undefined) return { goal: 'volume', none: 'deficiencyMissing' };
  const reference = referenceOf(agreed);
  const cold = inputs.liquid?.density;
  const there = reference === undefined ? cold : densityAt(reader, inputs, reference);
  if (cold === undefined || there === undefined) return { goal: 'volume', none: 'densityMissing' };
  // the mass that fills the label at the reference temperature takes this volume when it is filled
  const swollen = there / cold;
  const presets = presetsForVolume({
    estimate,
    floor: floor.uncertain!,
    allowances,
    label: label * swollen,
    deficiency: deficiency * swollen,
  });
  if (presets === undefined) return { goal: 'volume', none: 'neverEnds' };
  const ranges = rangesOf(place, presets);
  return { goal: 'volume', label, labelHere: label * swollen, deficiency, presets, ranges };
};

/** Counts for the goal on a floor, or what keeps them unknown. */
export const goalPresets = (place: PresetPlace, ask: PresetAsk): GoalPresets =>
  ask.goal === 'level' ? forLevel(place, ask) : forVolume(place, ask);
