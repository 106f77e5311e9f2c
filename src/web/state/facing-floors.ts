import type { Assessment } from '../../floor/assessment.ts';

type Facing = readonly [string | undefined, string | undefined];

/** Which two floors face each other: those chosen before, else the builder's and the one it is bound for. */
export const facingFloors = (assessment: Assessment, before: Facing): Facing => {
  const floors = assessment.floors;
  const kept = (tag: string | undefined) => floors.find((floor) => floor.floor === tag)?.floor;
  const left = kept(before[0]) ?? (floors.find((floor) => floor.role === 'built on') ?? floors[0])?.floor;
  const others = floors.filter((floor) => floor.floor !== left);
  const chosen = kept(before[1]);
  const right =
    chosen !== undefined && chosen !== left
      ? chosen
      : (others.find((floor) => floor.role === 'bound for') ?? others[0])?.floor;
  return [left, right];
};
