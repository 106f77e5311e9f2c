import type { JoinState, LaidJoin } from '../../../joins/index.ts';
import { type StoodState, stateOf, stoodStates } from '../state-of.ts';

/** How many joins stand where. */
export type CountedStates = Readonly<Record<StoodState, number>>;

const counted = (joins: readonly LaidJoin[], states: ReadonlyMap<string, JoinState>): CountedStates => {
  const counts: Record<StoodState, number> = {
    conflict: 0,
    trouble: 0,
    parted: 0,
    none: 0,
    made: 0,
    tested: 0,
  };
  for (const { tag } of joins) counts[stateOf(states, tag)] += 1;
  return counts;
};

export interface SectionStates {
  /** Absent: joins of which nobody says on which section an end is. */
  readonly section?: string;
  readonly counts: CountedStates;
  readonly total: number;
}

/** The joins of each section; one that leads from one to another hangs loose on both. */
export const statesOfSections = (
  joins: readonly LaidJoin[],
  states: ReadonlyMap<string, JoinState>,
): readonly SectionStates[] => {
  const bySection = new Map<string, LaidJoin[]>();
  for (const join of joins) {
    const sections = new Set([join.from.section, join.to.section].filter((one) => one !== undefined));
    for (const section of sections.size === 0 ? [''] : sections) {
      const known = bySection.get(section);
      if (known === undefined) bySection.set(section, [join]);
      else known.push(join);
    }
  }
  return [...bySection]
    .toSorted(([a], [b]) => Number(a === '') - Number(b === ''))
    .map(([section, own]) => ({
      ...(section === '' ? {} : { section }),
      counts: counted(own, states),
      total: own.length,
    }));
};

/** The same over all joins of a list. */
export const statesOfAll = (
  joins: readonly LaidJoin[],
  states: ReadonlyMap<string, JoinState>,
): SectionStates => ({ counts: counted(joins, states), total: joins.length });

/** The states that some join is in, what wants work first. */
export const heldStates = (counts: CountedStates): readonly StoodState[] =>
  stoodStates.filter((state) => counts[state] > 0);
