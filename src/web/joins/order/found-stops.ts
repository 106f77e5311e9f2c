import type { LaidJoin, Schedule } from '../../../joins/index.ts';
import type { RebuildStage } from '../../../joins/schedule/stage.ts';

/** One stop on the way with the joins of it that are looked for. */
export interface FoundStop {
  /** Absent: done before the line leaves. */
  readonly stage?: RebuildStage;
  readonly box?: string;
  readonly unplaced: boolean;
  readonly joins: readonly LaidJoin[];
}

export interface FoundStops {
  readonly stops: readonly FoundStop[];
  /** Joins that were found; those beyond the most are not among the stops. */
  readonly found: number;
}

/** What a join is found by: its code with and without the hyphen, tag, label, ends, cable, function. */
export const searchText = ({
  tag,
  code,
  name,
  label,
  from,
  to,
  box,
  cable,
  core,
  potential,
}: LaidJoin): string =>
  [
    code,
    `${code.slice(0, 3)}-${code.slice(3)}`,
    tag,
    name,
    label,
    from.label,
    from.section,
    from.box,
    to.label,
    to.section,
    to.box,
    box,
    cable,
    core,
    potential,
  ]
    .filter((one) => one !== undefined)
    .join('\n')
    .toLowerCase();

/**
 * The stops of the rebuild with what is looked for, in walking order; behind them what is no part of it.
 *
 * Symbols  texts  by tag, as `searchText` gives them
 *          wanted text that stands in them, empty for all;  box  one box alone, absent for all
 *          most   joins that are laid out
 * Cost     O(joins)
 */
export const foundStops = (
  { beforeShipping, stages }: Schedule,
  byTag: ReadonlyMap<string, LaidJoin>,
  texts: ReadonlyMap<string, string>,
  {
    wanted,
    box,
    most,
  }: { readonly wanted: string; readonly box?: string | undefined; readonly most: number },
): FoundStops => {
  const text = wanted.trim().toLowerCase();
  let found = 0;
  const taken = (tags: readonly string[]): readonly LaidJoin[] => {
    const own = tags.filter((tag) => text === '' || (texts.get(tag) ?? '').includes(text));
    const room = Math.max(0, most - found);
    found += own.length;
    return own.slice(0, room).flatMap((tag) => byTag.get(tag) ?? []);
  };
  const all: readonly (Omit<FoundStop, 'joins'> & { readonly tags: readonly string[] })[] = [
    ...stages.flatMap(({ stage, stops }) =>
      stops
        .filter((stop) => box === undefined || stop.box === box)
        .map(({ joins, ...stop }) => ({ ...stop, stage, tags: joins })),
    ),
    ...(box === undefined ? [{ unplaced: true, tags: beforeShipping }] : []),
  ];
  const stops = all
    .map(({ tags, ...stop }): FoundStop => ({ ...stop, joins: taken(tags) }))
    .filter(({ joins }) => joins.length > 0);
  return { stops, found };
};
