import type { FloorProof, Lack } from '../../../proof/index.ts';

export interface LackGroup {
  /** What they have in common: the stage of checks, the sort of anything else. */
  readonly of: string;
  readonly lacks: readonly Lack[];
  /** Who holds most of them. */
  readonly holder: Lack['holder'];
}

/** Lacks by what one reads together, in the order in which the gate names them. */
export const groupedLacks = (
  lacks: readonly Lack[],
  { checks }: Pick<FloorProof, 'checks'>,
): readonly LackGroup[] => {
  const stages = new Map(checks.map(({ check }) => [check.id, check.stage]));
  const groupOf = ({ sort, id }: Lack): string => {
    const stage = sort === 'check' ? stages.get(id) : undefined;
    return stage === undefined ? `lack.${sort}` : `stage.${stage}`;
  };
  return [...new Set(lacks.map(groupOf))].map((of) => {
    const own = lacks.filter((lack) => groupOf(lack) === of);
    const site = own.filter(({ holder }) => holder === 'site').length;
    return { of, lacks: own, holder: 2 * site > own.length ? 'site' : 'builder' };
  });
};
