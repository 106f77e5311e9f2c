import type { Problem } from '../../quantity/problem.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { heights, lengths, volumes } from './weighing-bounds.ts';
import { geometry } from './weighing-sources.ts';

interface ProfilePoint {
  readonly height: number;
  readonly volume: number;
}

/** Points from the inside bottom up; the bottom itself holds nothing. */
const risingProfile = (heights: readonly number[], volumes: readonly number[]): readonly ProfilePoint[] => {
  const points = heights
    .map((height, i) => ({ height, volume: volumes[i]! }))
    .sort((a, b) => a.height - b.height);
  return points[0]?.height === 0 ? points : [{ height: 0, volume: 0 }, ...points];
};

/**
 * Volume below a level, by the profile of the bottle.
 *
 * Method   straight between the two points of the profile about the level
 * Symbols  profile  [n]     rising in height and volume
 *          level    scalar  m, 0 to the highest point
 * Returns  volume, m3; and the area of the liquid there, m2
 * Assumes  a body of one section between two points: measure where it changes
 * Cost     O(n)
 * Source   geometry
 */
const volumeAtLevel = (profile: readonly ProfilePoint[], level: number) => {
  const above = Math.max(
    1,
    profile.findIndex(({ height }) => height >= level),
  );
  const [low, high] = [profile[above - 1]!, profile[above]!];
  const area = (high.volume - low.volume) / (high.height - low.height);
  return { volume: low.volume + area * (level - low.height), area };
};

interface VolumeAtLevelInputs {
  readonly heights: readonly number[];
  readonly volumes: readonly number[];
  readonly level: number;
}

const profileProblems = ({ heights, volumes, level }: VolumeAtLevelInputs): readonly Problem[] => {
  const lengths = listLengths({ heights, volumes });
  if (lengths.length > 0) return lengths;
  const profile = risingProfile(heights, volumes);
  const falls = profile.find(
    (point, i) => i > 0 && !(point.height > profile[i - 1]!.height && point.volume > profile[i - 1]!.volume),
  );
  const highest = profile.at(-1)!.height;
  return [
    ...(falls === undefined && profile.length > 1
      ? []
      : [{ code: 'PROFILE_NOT_RISING', path: 'volumes', given: falls?.volume ?? volumes[0] }]),
    ...(level > highest
      ? [{ code: 'PROFILE_LEVEL_ABOVE', path: 'level', given: level, allowed: `<= ${highest}` }]
      : []),
  ];
};

export const volumeAtLevelSheet = defineSheet({
  id: 'contents/volume-at-level',
  version: 1,
  inputs: {
    heights: listField('length', 'h_i', heights),
    volumes: weighedList('volume', 'V_i', volumes),
    level: numberField('length', 'h', lengths),
  },
  outputs: {
    volume: weighedField('volume', 'V'),
    millimetre: weighedField('volume', 'V_{1\\,\\mathrm{mm}}'),
  },
  formula: [
    'V = V_i + (h - h_i) \\frac{V_{i+1} - V_i}{h_{i+1} - h_i}, \\quad h_i \\le h \\le h_{i+1}',
    'V_{1\\,\\mathrm{mm}} = 0.001\\,\\mathrm{m}\\ \\frac{V_{i+1} - V_i}{h_{i+1} - h_i}',
  ],
  limits: [{ code: 'PROFILE_STRAIGHT', broken: () => true }],
  sources: [geometry],
  check: profileProblems,
  compute: (i: VolumeAtLevelInputs) => {
    const { volume, area } = volumeAtLevel(risingProfile(i.heights, i.volumes), i.level);
    return { volume, millimetre: 1e-3 * area };
  },
});
