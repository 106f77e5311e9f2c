import type { Envelope } from './envelope.ts';
import { byText } from './heads.ts';
import { cyclicIds } from './supersession.ts';

/** Several records that replace the same one, written apart from each other: people decide which counts. */
export interface Contested {
  readonly id: string;
  readonly by: readonly string[];
}

export interface Current {
  /** Records that no other replaces, in the order given. */
  readonly current: readonly Envelope[];
  readonly superseded: readonly Envelope[];
  readonly contested: readonly Contested[];
}

/** Those that replace each record, by its id; a circle replaces nothing. */
const replacements = (
  records: readonly Pick<Envelope, 'id' | 'supersedes'>[],
): ReadonlyMap<string, readonly string[]> => {
  const cyclic = cyclicIds(records);
  const replacedBy = new Map<string, string[]>();
  for (const { id, supersedes } of records) {
    if (supersedes === undefined || cyclic.has(id)) continue;
    const others = replacedBy.get(supersedes);
    if (others) others.push(id);
    else replacedBy.set(supersedes, [id]);
  }
  return replacedBy;
};

/** Ids of the records that others replace. */
export const replacedIds = (records: readonly Pick<Envelope, 'id' | 'supersedes'>[]): ReadonlySet<string> =>
  new Set(replacements(records).keys());

/**
 * Which records count now.
 *
 * Method   a record is superseded when another names it; all of a chain of corrections but the last are.
 *          Of records that replace each other in a circle none counts as replaced: both are shown
 * Symbols  records  the set, whole by verifyRecords
 * Returns  current, superseded, contested (where two corrections of one record are both current)
 * Problems none
 * Assumes  ids are unique
 * Cost     O(n)
 * Source   definition
 */
export const currentRecords = (records: readonly Envelope[]): Current => {
  const replacedBy = replacements(records);
  if (replacedBy.size === 0) return { current: records, superseded: [], contested: [] };
  const isReplaced = (record: Envelope): boolean => replacedBy.has(record.id);
  return {
    current: records.filter((record) => !isReplaced(record)),
    superseded: records.filter(isReplaced),
    contested: [...replacedBy]
      .filter(([, by]) => new Set(by).size > 1)
      .map(([id, by]) => ({ id, by: [...new Set(by)].sort(byText) }))
      .sort((a, b) => byText(a.id, b.id)),
  };
};
